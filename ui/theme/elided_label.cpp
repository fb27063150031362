#include "ui/theme/elided_label.h"

namespace holdband::ui {

ElidedLabel::ElidedLabel(const QString& text, QWidget* parent) : QLabel(parent)
{
    setTextFormat(Qt::PlainText);
    setWholeText(text);
}

void ElidedLabel::setWholeText(const QString& text)
{
    m_whole = text;
    setAccessibleName(text);
    updateGeometry();
    shorten();
}

QSize ElidedLabel::minimumSizeHint() const
{
    const QFontMetrics metrics = fontMetrics();
    return {std::min(metrics.horizontalAdvance(QStringLiteral("MMMMMM")),
                     metrics.horizontalAdvance(m_whole) + 2),
            metrics.height()};
}

QSize ElidedLabel::sizeHint() const
{
    return {fontMetrics().horizontalAdvance(m_whole) + 2, fontMetrics().height()};
}

void ElidedLabel::resizeEvent(QResizeEvent* event)
{
    QLabel::resizeEvent(event);
    shorten();
}

void ElidedLabel::shorten()
{
    QString oneLine = m_whole;
    oneLine.replace(QLatin1Char('\n'), QLatin1Char(' '));
    const QString fitting = fontMetrics().elidedText(oneLine, Qt::ElideRight, width());
    setText(fitting);
    setToolTip(fitting == m_whole ? QString() : m_whole);
}

} // namespace holdband::ui
