#include "ui/window/about.h"

#include "core/results/run/cautions.h"
#include "ui/words/words.h"

#include <QMessageBox>

namespace holdband::ui {

void showAbout(QWidget& window)
{
    QString cautions;
    for (const std::string& text : results::cautionsFor(Setup{}))
        cautions += QStringLiteral("\n• ") + shown(text);
    QMessageBox box(&window);
    box.setWindowTitle(Words::tr("About Holdband"));
    box.setText(Words::tr("Holdband %1").arg(QStringLiteral(HOLDBAND_VERSION)));
    box.setInformativeText(
        Words::tr("A logbook for home-brew fermentation runs: did a batch stay in its band, how "
                  "sure is that, and what did it use.\n\nLicence: GNU General Public License, "
                  "version 3 or later. No warranty.\n\nSafety:%1")
            .arg(cautions));
    box.exec();
}

} // namespace holdband::ui
