#include "ui/theme/theme.h"

#include "ui/theme/house_style.h"
#include "ui/theme/plain_tips.h"

#include <QLabel>
#include <QStyle>
#include <QToolTip>

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

bool isBold(const QByteArray& role)
{
    return role == "title" || role == "caretitle" || role == "main" || role == "fold";
}

} // namespace

Scheme systemScheme(const QPalette& desktop)
{
    return schemeOf(desktop);
}

void dress(QApplication& application, Scheme scheme)
{
    const QPalette palette = paletteOf(coloursOf(scheme));
    application.setPalette(palette);
    QToolTip::setPalette(palette);
    application.setStyle(new HouseStyle(scheme)); // the application owns it
    if (!application.findChild<PlainTips*>())
        application.installEventFilter(new PlainTips(&application));
}

void setRole(QWidget* widget, const char* role)
{
    const QByteArray before = widget->property("role").toByteArray();
    if (before == role)
        return;
    widget->setProperty("role", role);
    // Before that, Qt applies the style later itself.
    if (widget->testAttribute(Qt::WA_WState_Polished))
        widget->style()->polish(widget);
    widget->update();
    if (isBold(before) != isBold(role)) {
        QFont font = widget->font();
        font.setWeight(isBold(role) ? QFont::DemiBold : QFont::Normal);
        widget->setFont(font);
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
