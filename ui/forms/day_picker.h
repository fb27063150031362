// A calendar beside a typed time: a small button in the field, or Alt+Down, opens it. Choosing a
// day changes the date and keeps the time of day; Escape closes it.
#pragma once

#include <QObject>
#include <QPointer>

class QAction;
class QCalendarWidget;
class QDate;
class QFrame;
class QLineEdit;

namespace holdband::ui {

class DayPicker : public QObject {
    Q_OBJECT
public:
    /// `edit` owns it. Its accessible name and size must be set before.
    explicit DayPicker(QLineEdit* edit);

    /// Does nothing in a field that is for reading only.
    void open();
    /// The button in the field.
    QAction* button() const { return m_button; }
    /// Null while it is closed.
    QCalendarWidget* calendar() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void take(QDate day);
    void place();

    QLineEdit* m_edit;
    QAction* m_button;
    QPointer<QFrame> m_popup;
};

/// The width of a field for times, with its calendar's button, in pixels.
int widthForTimes(const QLineEdit& edit);

} // namespace holdband::ui
