// The language of the texts: the first of the person's that there is a catalogue for. English needs
// none.
#pragma once

#include <QString>

namespace holdband::ui {

/// The code of the language ("en", "de") to use for these wishes ("de-AT", "en-US" …), best first.
QString languageFor(const QStringList& wishes);

/// Loads the catalogue of that language ("en" loads none) for the running application; also Qt's
/// own, where it is installed. Call before the first text is made. False where there is none.
bool speak(const QString& language);

/// As the desktop says: for a command, which keeps to no window's choice.
void speakAsDesktop();

} // namespace holdband::ui
