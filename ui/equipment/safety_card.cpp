#include "ui/equipment/safety_card.h"

#include "core/preferences/preferences.h"
#include "core/results/run/cautions.h"
#include "core/text/name_suggestions.h"
#include "ui/equipment/setup_card.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::ui {

namespace {

/// A caution and the setups that it concerns.
struct Concern {
    std::string text;
    QStringList setups;
};

std::vector<Concern> concernsOf(const std::vector<Setup>& setups)
{
    std::vector<Concern> concerns;
    for (const Setup& setup : setups) {
        for (const std::string& text : results::cautionsFor(setup)) {
            auto found = std::find_if(concerns.begin(), concerns.end(),
                                      [&](const Concern& each) { return each.text == text; });
            if (found == concerns.end())
                found = concerns.insert(concerns.end(), {text, {}});
            found->setups << shortTitle(setup.name);
        }
    }
    return concerns;
}

std::vector<Setup> inUse(std::vector<Setup> setups)
{
    std::erase_if(setups, [](const Setup& setup) { return setup.retired.has_value(); });
    return setups;
}

} // namespace

QStringList safetySentences(const std::vector<Setup>& setups)
{
    const auto all = static_cast<qsizetype>(setups.size());
    QStringList some;
    QStringList common;
    for (const Concern& concern : concernsOf(setups)) {
        const QString text = capitalised(shown(concern.text));
        if (concern.setups.size() == all)
            common << text;
        else
            some << QStringLiteral("%1: %2").arg(concern.setups.join(QStringLiteral(", ")), text);
    }
    return some + common;
}

SafetyCard::SafetyCard(QWidget* parent) : NotesCard(Words::tr("Safety"), parent)
{
    makeFoldable(true);
}

void SafetyCard::setSetups(const std::vector<Setup>& setups)
{
    const std::vector<Setup> used = inUse(setups);
    setSentences(safetySentences(used));
    setSecondaryText(
        Words::counted("%n notes", "%n note", static_cast<std::uint64_t>(sentences().size())));
    m_kinds.clear();
    for (const Setup& setup : used)
        m_kinds << shown(folded(setup.kind));
    if (isVisible())
        noteShown();
}

void SafetyCard::showEvent(QShowEvent* event)
{
    NotesCard::showEvent(event);
    noteShown();
}

/// A card that is open stays open while the page is used.
void SafetyCard::noteShown()
{
    const QStringList before = preferences::kindsWithSafetyShown();
    const bool isNew = std::any_of(m_kinds.begin(), m_kinds.end(),
                                   [&](const QString& kind) { return !before.contains(kind); });
    if (!isNew)
        return;
    setFolded(false);
    preferences::noteSafetyShown(m_kinds);
}

} // namespace holdband::ui
