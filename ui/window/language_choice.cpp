#include "ui/window/language_choice.h"

#include "ui/window/preference_menu.h"
#include "ui/words/language.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

const QString languageKey = QStringLiteral("language");

} // namespace

void useChosenLanguage()
{
    const QString stored = storedChoice(languageKey);
    if (stored.isEmpty() || stored == QStringLiteral("desktop"))
        return useDesktopLanguage();
    loadLanguage(languageFor({stored}));
}

void addLanguageMenu(QMenu& menu, const std::function<void()>& makeWindowAgain)
{
    addChoiceMenu(menu, Words::tr("Lang&uage"), languageKey,
                  {{QStringLiteral("desktop"), Words::tr("As the &desktop")},
                   {QStringLiteral("en"), QStringLiteral("&English")},
                   {QStringLiteral("de"), QStringLiteral("D&eutsch")}},
                  [makeWindowAgain](const QString&) { makeWindowAgain(); });
}

} // namespace holdband::ui
