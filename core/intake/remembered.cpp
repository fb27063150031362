#include "core/intake/remembered.h"

#include "core/store/log_maps.h"

namespace holdband::intake {

std::optional<ColumnMap> rememberedMap(const store::LogbookFile& logbook, const std::string& shape)
{
    const auto text = store::readLogMap(logbook, shape);
    if (!text || !*text)
        return std::nullopt;
    const auto map = columnMapFrom(**text);
    return map ? std::optional(*map) : std::nullopt;
}

void rememberMap(const store::LogbookFile& logbook, const std::string& shape, const ColumnMap& map)
{
    auto change = store::Change::begin(
        logbook, store::ActWords{"remembered columns", {}, store::ActKind::own});
    if (change && store::writeLogMap(*change, shape, columnMapText(map)))
        std::ignore = change->commit();
}

} // namespace holdband::intake
