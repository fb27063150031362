#include "core/store/history/act_words.h"

#include "core/text/phrase.h"

#include <QtGlobal>
#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace holdband::store {

namespace {

using Parts = std::pair<std::string_view, std::string_view>; ///< what stands for %1 and %2

/// The acts as they are kept, also those that the window names. The first that fits is taken: those
/// that begin with a name come last.
constexpr std::array knownActs{
    QT_TRANSLATE_NOOP("Phrase", "made the logbook"),
    QT_TRANSLATE_NOOP("Phrase", "remembered columns"),
    QT_TRANSLATE_NOOP("Phrase", "weighed two arrangements"),
    QT_TRANSLATE_NOOP("Phrase", "units, zone or currency changed"),
    QT_TRANSLATE_NOOP("Phrase", "rounds changed"),
    QT_TRANSLATE_NOOP("Phrase", "price of energy changed"),
    QT_TRANSLATE_NOOP("Phrase", "noted something"),
    QT_TRANSLATE_NOOP("Phrase", "changed a note"),
    QT_TRANSLATE_NOOP("Phrase", "removed a note"),
    QT_TRANSLATE_NOOP("Phrase", "typed a round of 1 reading"),
    QT_TRANSLATE_NOOP("Phrase", "typed a round of %1 readings"),
    QT_TRANSLATE_NOOP("Phrase", "corrected a reading of %1"),
    QT_TRANSLATE_NOOP("Phrase", "corrected a gravity of %1"),
    QT_TRANSLATE_NOOP("Phrase", "changed the note of a reading of %1"),
    QT_TRANSLATE_NOOP("Phrase", "changed the note of a gravity of %1"),
    QT_TRANSLATE_NOOP("Phrase", "changed a note of %1"),
    QT_TRANSLATE_NOOP("Phrase", "removed a note of %1"),
    QT_TRANSLATE_NOOP("Phrase", "noted something of %1"),
    QT_TRANSLATE_NOOP("Phrase", "took away a reading of %1"),
    QT_TRANSLATE_NOOP("Phrase", "took away a gravity of %1"),
    QT_TRANSLATE_NOOP("Phrase", "took away %1 readings of %2"),
    QT_TRANSLATE_NOOP("Phrase", "brought back a reading of %1"),
    QT_TRANSLATE_NOOP("Phrase", "brought back a stretch of %1"),
    QT_TRANSLATE_NOOP("Phrase", "brought back %1 readings of %2"),
    QT_TRANSLATE_NOOP("Phrase", "left out a stretch of %1"),
    QT_TRANSLATE_NOOP("Phrase", "rows of the watched %1"),
    QT_TRANSLATE_NOOP("Phrase", "watched no longer: %1"),
    QT_TRANSLATE_NOOP("Phrase", "watched %1"),
    QT_TRANSLATE_NOOP("Phrase", "imported %1"),
    QT_TRANSLATE_NOOP("Phrase", "loaded %1"),
    QT_TRANSLATE_NOOP("Phrase", "put back %1"),
    QT_TRANSLATE_NOOP("Phrase", "took back %1"),
    QT_TRANSLATE_NOOP("Phrase", "set up %1"),
    QT_TRANSLATE_NOOP("Phrase", "plan %1 kept"),
    QT_TRANSLATE_NOOP("Phrase", "plan %1 removed"),
    QT_TRANSLATE_NOOP("Phrase", "setup %1 added"),
    QT_TRANSLATE_NOOP("Phrase", "setup %1 changed"),
    QT_TRANSLATE_NOOP("Phrase", "setup %1 removed"),
    QT_TRANSLATE_NOOP("Phrase", "setup %1 retired"),
    QT_TRANSLATE_NOOP("Phrase", "setup %1 brought back"),
    QT_TRANSLATE_NOOP("Phrase", "sensor %1 added"),
    QT_TRANSLATE_NOOP("Phrase", "sensor %1 changed"),
    QT_TRANSLATE_NOOP("Phrase", "sensor %1 removed"),
    QT_TRANSLATE_NOOP("Phrase", "sensor %1 retired"),
    QT_TRANSLATE_NOOP("Phrase", "sensor %1 brought back"),
    QT_TRANSLATE_NOOP("Phrase", "meter %1 added"),
    QT_TRANSLATE_NOOP("Phrase", "meter %1 changed"),
    QT_TRANSLATE_NOOP("Phrase", "meter %1 removed"),
    QT_TRANSLATE_NOOP("Phrase", "meter %1 retired"),
    QT_TRANSLATE_NOOP("Phrase", "meter %1 brought back"),
    QT_TRANSLATE_NOOP("Phrase", "%1 took the place of %2"),
    QT_TRANSLATE_NOOP("Phrase", "%1: cause of the excursion of %2"),
    QT_TRANSLATE_NOOP("Phrase", "%1: limits changed"),
    QT_TRANSLATE_NOOP("Phrase", "%1: changed"),
    QT_TRANSLATE_NOOP("Phrase", "%1: removed"),
    QT_TRANSLATE_NOOP("Phrase", "%1: pitched"),
    QT_TRANSLATE_NOOP("Phrase", "%1: reopened"),
    QT_TRANSLATE_NOOP("Phrase", "%1: ended"),
    QT_TRANSLATE_NOOP("Phrase", "%1: %2 ended"),
};

/// What stands in the places of the pattern, where the text is one of its kind. It is always put
/// together to the same text again, so that a name with such words in it does no harm.
std::optional<Parts> partsIn(std::string_view text, std::string_view pattern)
{
    const std::size_t first = pattern.find("%1");
    if (first == pattern.npos)
        return text == pattern ? std::optional(Parts()) : std::nullopt;
    const std::size_t second = pattern.find("%2", first);
    const std::string_view before = pattern.substr(0, first);
    const std::string_view between =
        pattern.substr(first + 2, second == pattern.npos ? second : second - first - 2);
    const std::string_view after =
        second == pattern.npos ? std::string_view() : pattern.substr(second + 2);
    if (!text.starts_with(before))
        return std::nullopt;
    text.remove_prefix(before.size());
    if (second == pattern.npos)
        return text.ends_with(between)
                   ? std::optional(Parts(text.substr(0, text.size() - between.size()), {}))
                   : std::nullopt;
    const std::size_t cut = text.find(between);
    if (cut == text.npos || text.size() < cut + between.size() + after.size() ||
        !text.ends_with(after))
        return std::nullopt;
    const std::string_view rest = text.substr(cut + between.size());
    return Parts(text.substr(0, cut), rest.substr(0, rest.size() - after.size()));
}

} // namespace

std::string actForPeople(const std::string& stored)
{
    if (const auto what = partsIn(stored, "took back: %1"))
        return Phrase::tr("took back: %1").with(actForPeople(std::string(what->first)));
    if (const auto what = partsIn(stored, "did again: %1"))
        return Phrase::tr("did again: %1").with(actForPeople(std::string(what->first)));
    for (const char* act : knownActs) {
        if (const auto parts = partsIn(stored, act))
            return Phrase::tr(act).with(parts->first, parts->second);
    }
    return stored;
}

} // namespace holdband::store
