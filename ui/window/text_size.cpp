#include "ui/window/text_size.h"

#include "ui/window/preference_menu.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QFont>
#include <QMenu>
#include <array>

namespace holdband::ui {

namespace {

const QString textSizeKey = QStringLiteral("text-size");
constexpr std::array percents{100, 115, 130, 150, 175, 200};

} // namespace

void applyStoredTextSize(QApplication& application)
{
    const int stored = storedChoice(textSizeKey).toInt();
    if (std::find(percents.begin(), percents.end(), stored) == percents.end() || stored == 100)
        return;
    QFont font = QApplication::font();
    if (font.pointSizeF() > 0.0)
        font.setPointSizeF(font.pointSizeF() * stored / 100.0);
    else
        font.setPixelSize(font.pixelSize() * stored / 100);
    application.setFont(font);
}

void addTextSizeMenu(QMenu& menu, const std::function<void(const QString&)>& say)
{
    std::vector<PreferenceChoice> choices;
    for (const int percent : percents)
        choices.push_back({QString::number(percent),
                           percent == 100 ? Words::tr("As the &desktop")
                                          : Words::tr("%1 %", "a size of text").arg(percent)});
    addChoiceMenu(menu, Words::tr("&Text size"), textSizeKey, choices, [say](const QString&) {
        say(Words::tr("The text has the chosen size from the next start on."));
    });
}

} // namespace holdband::ui
