// The language of the texts: the first of the person's that a catalogue is there for, or the one
// that was chosen in the window. English needs none.
#pragma once

#include <QString>
#include <functional>

class QMenu;

namespace holdband::ui {

/// The code of the language ("en", "de") to use for these wishes ("de-AT", "en-US" …), best first.
QString languageFor(const QStringList& wishes);

/// Loads the catalogue of that language ("en" loads none) for the running application; also Qt's
/// own, where it is installed. Call before the first text is made. False where there is none.
bool speak(const QString& language);

/// As was chosen in the window, else as the desktop says.
void speakAsKept();

/// As the desktop says: for a command, which keeps to no window's choice.
void speakAsDesktop();

/// "Language" with its choices; one that was chosen holds from the next start.
void addLanguageMenu(QMenu& menu, const std::function<void(const QString&)>& say);

} // namespace holdband::ui
