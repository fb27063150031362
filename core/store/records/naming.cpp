#include "core/store/records/naming.h"

#include "core/store/history/record_messages.h"
#include "core/store/sqlite/rows.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::store {

namespace {

bool isControl(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 || byte == 0x7f;
}

std::string shortened(const std::string& name)
{
    constexpr std::size_t shown = 40;
    if (name.size() <= shown)
        return name;
    std::size_t end = shown;
    while (end > 0 && (static_cast<unsigned char>(name[end]) & 0xc0) == 0x80)
        --end; // don't cut inside a character
    return name.substr(0, end) + "…";
}

Done checkShape(std::string_view what, const std::string& name)
{
    const RecordMessages& words = thingWords(what);
    if (folded(name).empty())
        return dataProblem(Phrase::tr(words.needsName));
    if (name.size() > longestName)
        return dataProblem(Phrase::tr(words.tooLong).with(shortened(name)), {},
                           Phrase::tr("at most %1 bytes").with(std::to_string(longestName)));
    if (std::any_of(name.begin(), name.end(), isControl))
        return dataProblem(Phrase::tr(words.hasControls), {}, Phrase::tr("take it out"));
    return {};
}

} // namespace

Done checkNameIsFree(const Database& database, std::string_view table, std::string_view what,
                     const std::string& name, std::optional<std::int64_t> but)
{
    HOLDBAND_TRY(checkShape(what, name));
    auto names = query(
        database, "SELECT name FROM " + std::string(table) + " WHERE id IS NOT ?",
        [](const Statement& row) { return row.text(0); }, but);
    HOLDBAND_TRY(names);
    for (const std::string& taken : *names) {
        if (taken == name)
            return dataProblem(Phrase::tr(thingWords(what).taken).with(name));
        if (folded(taken) == folded(name))
            return dataProblem(Phrase::tr(thingWords(what).alike).with(name, taken), {},
                               Phrase::tr("choose a name that differs more"));
    }
    return {};
}

} // namespace holdband::store
