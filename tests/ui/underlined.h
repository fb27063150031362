// The underlined letters of a window, for tests that check for duplicates.
#pragma once

#include <QAbstractButton>
#include <QKeySequence>
#include <QLabel>
#include <QMainWindow>
#include <QMenuBar>
#include <QStringList>

namespace holdband::ui::test {

/// The underlined letter of every shown control, with its text: "Alt+T &Time", sorted.
inline QStringList underlinedLetters(const QMainWindow& window)
{
    QStringList all;
    const auto add = [&](const QString& text) {
        const QKeySequence keys = QKeySequence::mnemonic(text);
        if (!keys.isEmpty())
            all << keys.toString() + QLatin1Char(' ') + text;
    };
    for (const QAction* menu : window.menuBar()->actions())
        add(menu->text());
    for (const auto* button : window.findChildren<QAbstractButton*>()) {
        if (button->isVisible())
            add(button->text());
    }
    for (const auto* label : window.findChildren<QLabel*>()) {
        if (label->isVisible() && label->buddy())
            add(label->text());
    }
    all.sort();
    return all;
}

/// Those used twice: "Alt+T &Time and &Tabs".
inline QStringList underlinedTwice(const QMainWindow& window)
{
    const QStringList all = underlinedLetters(window);
    QStringList twice;
    for (qsizetype i = 1; i < all.size(); ++i) {
        if (all[i].section(u' ', 0, 0) == all[i - 1].section(u' ', 0, 0))
            twice << all[i - 1] + QStringLiteral(" and ") + all[i].section(u' ', 1);
    }
    return twice;
}

} // namespace holdband::ui::test
