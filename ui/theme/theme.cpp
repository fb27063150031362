#include "ui/theme/theme.h"

#include <QLabel>
#include <QStyle>
#include <QStyleFactory>

namespace holdband::ui {

namespace {

QPalette paletteOf(const Colours& c)
{
    QPalette palette;
    palette.setColor(QPalette::Window, c.page);
    palette.setColor(QPalette::WindowText, c.text);
    palette.setColor(QPalette::Base, c.card);
    palette.setColor(QPalette::AlternateBase, c.page);
    palette.setColor(QPalette::Text, c.text);
    palette.setColor(QPalette::PlaceholderText, c.muted);
    palette.setColor(QPalette::Button, c.button);
    palette.setColor(QPalette::ButtonText, c.text);
    palette.setColor(QPalette::Highlight, c.focus);
    palette.setColor(QPalette::HighlightedText, c.card);
    palette.setColor(QPalette::ToolTipBase, c.card);
    palette.setColor(QPalette::ToolTipText, c.text);
    palette.setColor(QPalette::Link, c.focus);
    palette.setColor(QPalette::Mid, c.cardEdge);
    palette.setColor(QPalette::BrightText, c.warn);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, mixed(c.muted, c.page, 0.75));
    return palette;
}

// %1 button, %2 text, %3 strong, %4 strong text, %5 focus, %6 field edge, %7 card, %8 muted,
// %9 warn, %10 care
const char* const sheet = R"(
QPushButton { background: %1; color: %2; border: 2px solid transparent; border-radius: 5px;
              padding: 4px 13px; }
QPushButton:hover { border-color: %6; }
QPushButton:checked, QPushButton[role="main"] { background: %3; color: %4; }
QPushButton:focus { border-color: %5; }
QPushButton:disabled { color: %8; background: %7; border-color: %1; }
QLineEdit { background: %7; color: %2; border: 1px solid %6; border-radius: 4px; padding: 4px 7px; }
QLineEdit:focus { border: 2px solid %5; padding: 3px 6px; }
QLineEdit[role="refused"] { border: 2px solid %9; padding: 3px 6px; }
QLabel[role="muted"] { color: %8; }
QLabel[role="warn"] { color: %9; }
QLabel[role="care"] { color: %10; }
QLabel[role="caretitle"] { color: %10; }
QTableView { background: transparent; border: none; gridline-color: transparent;
             selection-background-color: %1; selection-color: %2; }
QTableView:focus { border: 1px solid %5; border-radius: 3px; }
QTableView::item { padding: 0 5px; }
QHeaderView, QTableCornerButton::section { background: transparent; border: none; }
QHeaderView::section { background: transparent; color: %8; border: none; padding: 1px 5px; }
QScrollArea { background: transparent; border: none; }
QScrollArea > QWidget > QWidget#inner { background: transparent; }
QScrollBar:vertical { background: transparent; width: 11px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 11px; margin: 0; }
QScrollBar::handle { background: %6; border-radius: 4px; margin: 1px 1px 1px 2px; min-height: 28px;
                     min-width: 28px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QProgressBar { background: %1; border: none; border-radius: 4px; height: 8px; }
QProgressBar::chunk { background: %5; border-radius: 4px; }
QToolTip { background: %7; color: %2; border: 1px solid %6; padding: 4px; }
)";

QString sheetOf(const Colours& c)
{
    return QString::fromLatin1(sheet)
        .arg(c.button.name(), c.text.name(), c.strong.name(), c.strongText.name(), c.focus.name(),
             c.fieldEdge.name(), c.card.name(), c.muted.name(), c.warn.name())
        .arg(c.careText.name());
}

} // namespace

Scheme systemScheme(const QPalette& desktop)
{
    return schemeOf(desktop);
}

void dress(QApplication& application, Scheme scheme)
{
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    const Colours& colours = coloursOf(scheme);
    application.setPalette(paletteOf(colours));
    application.setStyleSheet(sheetOf(colours));
}

void setRole(QWidget* widget, const char* role)
{
    if (widget->property("role").toByteArray() == role)
        return;
    widget->setProperty("role", role);
    // Before it is shown the style comes by itself; a second polish would undo its fonts.
    if (widget->testAttribute(Qt::WA_WState_Polished)) {
        widget->style()->unpolish(widget);
        widget->style()->polish(widget);
    }
    const QByteArray part(role);
    if (part == "title" || part == "caretitle" || part == "main") {
        QFont bold = widget->font();
        bold.setWeight(QFont::DemiBold);
        widget->setFont(bold);
    }
}

QLabel* makeLabel(const QString& text, const char* role, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    setRole(label, role);
    return label;
}

} // namespace holdband::ui
