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
const char* const desktopFontProperty = "desktopFont"; // property of the application
constexpr std::array percents{100, 115, 130, 150, 175, 200};

} // namespace

void applyStoredTextSize(QApplication& application)
{
    if (!application.property(desktopFontProperty).isValid())
        application.setProperty(desktopFontProperty, QApplication::font());
    QFont font = application.property(desktopFontProperty).value<QFont>();
    int stored = storedChoice(textSizeKey).toInt();
    if (std::find(percents.begin(), percents.end(), stored) == percents.end())
        stored = 100;
    if (font.pointSizeF() > 0.0)
        font.setPointSizeF(font.pointSizeF() * stored / 100.0);
    else
        font.setPixelSize(font.pixelSize() * stored / 100);
    application.setFont(font);
}

void addTextSizeMenu(QMenu& menu, const std::function<void()>& makeWindowAgain)
{
    std::vector<PreferenceChoice> choices;
    for (const int percent : percents)
        choices.push_back({QString::number(percent),
                           percent == 100 ? Words::tr("As the &desktop")
                                          : Words::tr("%1 %", "a size of text").arg(percent)});
    addChoiceMenu(menu, Words::tr("&Text size"), textSizeKey, choices,
                  [makeWindowAgain](const QString&) { makeWindowAgain(); });
}

} // namespace holdband::ui
