#include "core/intake/log/remembered.h"

#include "core/store/records/log_maps.h"

namespace holdband::intake {

namespace {

Result<PreviewedLog> guessed(const store::LogbookFile& logbook, const LogSource& source,
                             const LayoutRequest& layoutRequest)
{
    auto preview = previewLog(logbook, source, layoutRequest);
    HOLDBAND_TRY(preview);
    PreviewedLog looked{std::move(*preview), {}, false};
    looked.map = looked.preview.map();
    looked.map.layout = layoutRequest;
    return looked;
}

/// Applies the choices if they fit the columns; false if they don't.
bool put(const store::LogbookFile& logbook, const ColumnMap& chosen, PreviewedLog& looked)
{
    if (chosen.columns.size() != looked.preview.columns.size())
        return false;
    applyMap(logbook, chosen, looked.preview);
    const ColumnMap columns = looked.preview.map();
    looked.map = chosen;
    looked.map.columns = columns.columns;
    looked.map.names = columns.names;
    looked.map.layout = looked.preview.asked;
    return true;
}

} // namespace

std::optional<ColumnMap> rememberedMap(const store::LogbookFile& logbook, const std::string& shape)
{
    const auto text = store::readLogMap(logbook, shape);
    if (!text || !*text)
        return std::nullopt;
    const auto map = columnMapFrom(**text);
    return map ? std::optional(*map) : std::nullopt;
}

void rememberMap(const store::LogbookFile& logbook, const LogPreview& preview, const ColumnMap& map)
{
    auto change = store::Change::begin(
        logbook, {store::HistoryVerb::columnsRemembered, {}, {}, store::HistoryKind::own});
    if (!change)
        return;
    // A file that has this shape without a requested layout needs none, so none is stored for it.
    ColumnMap plain = map;
    plain.layout = {};
    Done done = store::writeLogMap(*change, preview.shape, columnMapText(plain));
    if (done && map.layout != LayoutRequest{} && preview.found)
        done = store::writeLogMap(*change, preview.found->shape, columnMapText(map));
    if (done)
        std::ignore = change->commit();
}

Result<PreviewedLog> openPreview(const store::LogbookFile& logbook, const LogSource& source,
                                 const LayoutRequest& layoutRequest)
{
    auto looked = guessed(logbook, source, layoutRequest);
    HOLDBAND_TRY(looked);
    const auto stored = rememberedMap(logbook, looked->preview.shape);
    if (!stored)
        return looked;
    if (layoutRequest == LayoutRequest{} && stored->layout != layoutRequest) {
        auto again = guessed(logbook, source, stored->layout);
        if (!again)
            return looked; // the file has another shape after all
        again->remembered = put(logbook, *stored, *again);
        return again->remembered ? again : looked;
    }
    looked->remembered = put(logbook, *stored, *looked);
    return looked;
}

Result<PreviewedLog> openPreviewWith(const store::LogbookFile& logbook, const LogSource& source,
                                     const ColumnMap& chosen)
{
    auto looked = guessed(logbook, source, chosen.layout);
    HOLDBAND_TRY(looked);
    looked->remembered = put(logbook, chosen, *looked);
    return looked;
}

Result<PreviewedLog> openChangedPreview(const store::LogbookFile& logbook, const LogSource& source,
                                        const ColumnMap& chosen, const std::string& shape)
{
    auto looked = openPreviewWith(logbook, source, chosen);
    return looked && looked->preview.shape == shape ? looked : openPreview(logbook, source);
}

Result<PreviewedLog> detectAgain(const store::LogbookFile& logbook, const LogSource& source)
{
    return guessed(logbook, source, {});
}

} // namespace holdband::intake
