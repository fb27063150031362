// The language of the texts: the first of the user's languages with a catalogue. English needs
// none.
#pragma once

#include <QString>

namespace holdband::ui {

/// The code of the language ("en", "de") for these preferred ones ("de-AT", "en-US" …), best first.
QString languageFor(const QStringList& preferred);

/// Loads the catalogue of that language ("en" loads none) for the running application; also Qt's
/// own, if it is installed. Call before the first text is made. False if there is none.
bool loadLanguage(const QString& language);

/// Uses the desktop's language: for commands, which ignore the window's choice.
void useDesktopLanguage();

} // namespace holdband::ui
