#include "ui/run/explained_label.h"

#include "ui/theme/plain_tips.h"
#include "ui/words/words.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyleOptionFocusRect>
#include <QToolTip>

namespace holdband::ui {

namespace {

constexpr int shownForMs = 60'000;

bool isHelpKey(const QEvent& event)
{
    return static_cast<const QKeyEvent&>(event).key() == Qt::Key_F1;
}

} // namespace

ExplainedLabel::ExplainedLabel(QWidget* parent) : QLabel(parent)
{
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    setWords({}, {});
}

void ExplainedLabel::setWords(const QString& text, const QString& explanation)
{
    setText(withNoBreakSpaces(text));
    setAccessibleName(text);
    setAccessibleDescription(explanation);
    setToolTip(explanation);
    setFocusPolicy(text.isEmpty() ? Qt::NoFocus : Qt::StrongFocus);
    setVisible(!text.isEmpty());
}

/// F1 is handled here and not by the window.
bool ExplainedLabel::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && isHelpKey(*event))
        event->accept();
    return QLabel::event(event);
}

void ExplainedLabel::keyPressEvent(QKeyEvent* event)
{
    if (!isHelpKey(*event))
        return QLabel::keyPressEvent(event);
    QToolTip::showText(mapToGlobal(rect().bottomLeft()), tip(toolTip()), this, {}, shownForMs);
    event->accept();
}

void ExplainedLabel::paintEvent(QPaintEvent* event)
{
    QLabel::paintEvent(event);
    if (!hasFocus())
        return;
    QPainter painter(this);
    QStyleOptionFocusRect option;
    option.initFrom(this);
    style()->drawPrimitive(QStyle::PE_FrameFocusRect, &option, &painter, this);
}

} // namespace holdband::ui
