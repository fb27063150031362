#include "core/text/name_suggestions.h"

#include "core/text/phrase.h"

#include <QString>
#include <algorithm>
#include <optional>

namespace holdband {

namespace {

constexpr std::size_t longestCompared = 100; ///< letters; longer names are compared by their start

std::u32string letters(std::string_view text)
{
    const QString qt = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    std::u32string list = qt.simplified().toCaseFolded().toStdU32String();
    if (list.size() > longestCompared)
        list.resize(longestCompared);
    return list;
}

/// Optimal string alignment distance: insert, drop, change, and swap of neighbours each count one.
std::size_t slips(const std::u32string& a, const std::u32string& b)
{
    std::vector<std::size_t> before(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        last[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, changed});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], before[j - 2] + 1);
        }
        before.swap(last);
        last.swap(row);
    }
    return last[b.size()];
}

/// How far a name is from the wanted one; absent where it isn't similar.
std::optional<std::size_t> distance(const std::u32string& wanted, const std::u32string& name)
{
    const std::size_t count = slips(wanted, name);
    if (count <= std::max<std::size_t>(1, std::max(wanted.size(), name.size()) / 3))
        return count;
    const bool inside =
        wanted.size() >= 2 && name.size() >= 2 &&
        (name.find(wanted) != std::u32string::npos || wanted.find(name) != std::u32string::npos);
    return inside ? std::optional{count} : std::nullopt;
}

} // namespace

std::string folded(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))
        .simplified()
        .toCaseFolded()
        .toStdString();
}

std::optional<std::string> meantName(std::string_view wanted, const std::vector<std::string>& known)
{
    if (std::find(known.begin(), known.end(), wanted) != known.end())
        return std::string(wanted);
    const std::string meant = folded(wanted);
    std::optional<std::string> found;
    for (const std::string& name : known) {
        if (folded(name) != meant)
            continue;
        if (found)
            return std::nullopt;
        found = name;
    }
    return found;
}

std::vector<std::string> suggestedNames(std::string_view wanted,
                                        const std::vector<std::string>& known, std::size_t most)
{
    const std::u32string wantedLetters = letters(wanted);
    std::vector<std::pair<std::size_t, const std::string*>> found;
    for (const std::string& name : known) {
        if (const auto away = distance(wantedLetters, letters(name)))
            found.emplace_back(*away, &name);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::string> names;
    for (const auto& [away, name] : found) {
        if (names.size() < most)
            names.push_back(*name);
    }
    return names;
}

std::string alternatives(const std::vector<std::string>& names)
{
    std::string list;
    for (const std::string& name : names)
        list = list.empty() ? name : std::string(Phrase::tr("%1 or %2").with(list, name));
    return list;
}

std::string joined(const std::vector<std::string>& names, std::size_t most)
{
    std::string text;
    for (std::size_t i = 0; i < std::min(names.size(), most); ++i)
        text += (i == 0 ? "" : ", ") + names[i];
    if (names.size() <= most)
        return text;
    return Phrase::counted("%1 and %n more", "%1 and %n more", names.size() - most).with(text);
}

std::string listed(const std::vector<std::string>& names)
{
    if (names.size() < 2)
        return joined(names);
    const std::vector<std::string> first(names.begin(), names.end() - 1);
    return Phrase::tr("%1 and %2", "the last of a list")
        .with(joined(first, first.size()), names.back());
}

std::string suggestion(std::string_view wanted, const std::vector<std::string>& known)
{
    if (known.empty())
        return Phrase::tr("there are none");
    const std::vector<std::string> close = suggestedNames(wanted, known);
    return close.empty() ? Phrase::tr("there are: %1").with(joined(known))
                         : Phrase::tr("did you mean %1?").with(joined(close));
}

} // namespace holdband
