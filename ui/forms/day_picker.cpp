#include "ui/forms/day_picker.h"

#include "ui/forms/typed_time.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QAction>
#include <QCalendarWidget>
#include <QFrame>
#include <QGuiApplication>
#include <QIconEngine>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QScreen>
#include <QStyle>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

/// A sheet of a calendar in the colour of text, sharp at every scale.
class CalendarIcon : public QIconEngine {
public:
    void paint(QPainter* painter, const QRect& rect, QIcon::Mode, QIcon::State) override
    {
        const double side = std::min(rect.width(), rect.height());
        QRectF sheet(0, 0, 0.74 * side, 0.7 * side);
        sheet.moveCenter(QRectF(rect).center() + QPointF(0, 0.04 * side));
        const QColor ink = coloursOf(QGuiApplication::palette()).muted;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(QPen(ink, side / 13.0));
        painter->drawRoundedRect(sheet, side / 12.0, side / 12.0);
        const double line = sheet.top() + 0.3 * sheet.height();
        painter->drawLine(QPointF(sheet.left(), line), QPointF(sheet.right(), line));
        for (const double share : {0.3, 0.7}) {
            const double x = sheet.left() + share * sheet.width();
            painter->drawLine(QPointF(x, sheet.top() - 0.1 * side),
                              QPointF(x, sheet.top() + 0.05 * side));
        }
        painter->restore();
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override
    {
        QPixmap picture(size);
        picture.fill(Qt::transparent);
        QPainter painter(&picture);
        paint(&painter, picture.rect(), mode, state);
        return picture;
    }
    QIconEngine* clone() const override { return new CalendarIcon(*this); }
};

Date dateOf(QDate day)
{
    return {std::chrono::year{day.year()}, std::chrono::month{static_cast<unsigned>(day.month())},
            std::chrono::day{static_cast<unsigned>(day.day())}};
}

QDate dayOf(LocalTime local)
{
    const Date date{std::chrono::floor<std::chrono::days>(local)};
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}

} // namespace

DayPicker::DayPicker(QLineEdit* edit)
    : QObject(edit), m_edit(edit),
      m_button(edit->addAction(QIcon(new CalendarIcon), QLineEdit::TrailingPosition))
{
    m_button->setText(edit->accessibleName().isEmpty()
                          ? Words::tr("Choose the day")
                          : Words::tr("%1: choose the day").arg(edit->accessibleName()));
    m_button->setToolTip(Words::tr("Choose the day (Alt+Down)"));
    connect(m_button, &QAction::triggered, this, &DayPicker::open);
    edit->installEventFilter(this);
}

QCalendarWidget* DayPicker::calendar() const
{
    return m_popup ? m_popup->findChild<QCalendarWidget*>() : nullptr;
}

void DayPicker::open()
{
    if (m_edit->isReadOnly() || !m_edit->isEnabled() || m_popup)
        return;
    m_popup = new QFrame(m_edit, Qt::Popup);
    m_popup->setAttribute(Qt::WA_DeleteOnClose);
    m_popup->setFrameShape(QFrame::StyledPanel);
    auto* calendar = new QCalendarWidget(m_popup);
    calendar->setAccessibleName(m_button->text());
    calendar->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
    calendar->setDateRange(QDate(1990, 1, 1), QDate(2100, 12, 31)); // the plausible years
    if (const auto typed = typedLocalTime(m_edit->text(), dateOf(calendar->selectedDate())))
        calendar->setSelectedDate(dayOf(typed->local));
    auto* layout = new QVBoxLayout(m_popup);
    layout->setContentsMargins(4, 4, 4, 4);
    layout->addWidget(calendar);
    connect(calendar, &QCalendarWidget::clicked, this, &DayPicker::take);
    connect(calendar, &QCalendarWidget::activated, this, &DayPicker::take);
    for (QWidget* part : calendar->findChildren<QWidget*>())
        part->installEventFilter(this);
    calendar->installEventFilter(this);
    place();
    m_popup->show();
    calendar->setFocus();
}

/// Below the field, or above it where the screen ends.
void DayPicker::place()
{
    m_popup->adjustSize();
    const QRect screen = m_edit->screen()->availableGeometry();
    QRect box(m_edit->mapToGlobal(QPoint(0, m_edit->height())), m_popup->sizeHint());
    if (box.bottom() > screen.bottom())
        box.moveBottom(m_edit->mapToGlobal(QPoint(0, 0)).y() - 1);
    box.moveLeft(std::max(screen.left(), std::min(box.left(), screen.right() - box.width())));
    box.moveTop(std::max(screen.top(), box.top()));
    m_popup->setGeometry(box);
}

void DayPicker::take(QDate day)
{
    if (!m_popup)
        return; // a double click, which is a click too
    const auto typed = typedLocalTime(m_edit->text(), dateOf(day));
    Milliseconds ofDay{0};
    if (typed)
        ofDay = typed->local - std::chrono::floor<std::chrono::days>(typed->local);
    m_popup->close();
    m_popup.clear(); // it is deleted later
    const QString text = localTimeText(LocalTime{std::chrono::local_days{dateOf(day)}} + ofDay);
    m_edit->setFocus();
    m_edit->setText(text);
    Q_EMIT m_edit->textEdited(text); // chosen by the user, as if typed
}

bool DayPicker::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return QObject::eventFilter(watched, event);
    const auto* key = static_cast<const QKeyEvent*>(event);
    if (watched == m_edit && key->key() == Qt::Key_Down && key->modifiers() == Qt::AltModifier) {
        open();
        return true;
    }
    if (watched != m_edit && m_popup && key->key() == Qt::Key_Escape) {
        m_popup->close();
        m_popup.clear();
        m_edit->setFocus();
        return true;
    }
    return QObject::eventFilter(watched, event);
}

int widthForTimes(const QLineEdit& edit)
{
    constexpr int frame = 34;
    const int button = edit.style()->pixelMetric(QStyle::PM_SmallIconSize, nullptr, &edit) + 8;
    return edit.fontMetrics().horizontalAdvance(longestTime()) + frame + button;
}

} // namespace holdband::ui
