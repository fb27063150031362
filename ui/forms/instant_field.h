// A local time with a "Now" button. An hour that a clock change skips or doubles is not guessed:
// the field offers both possible instants as buttons.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"
#include "core/text/zone.h"
#include "ui/forms/typed_time.h"

#include <QWidget>
#include <functional>
#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace holdband::ui {

class DayPicker;

class InstantField : public QWidget {
    Q_OBJECT
public:
    explicit InstantField(const QString& name, QWidget* parent = nullptr);
    ~InstantField() override;

    void setZone(const Zone& zone);
    /// Sets the clock for "Now".
    void setClock(std::function<Instant()> now) { m_now = std::move(now); }
    void setOptional(bool optional) { m_optional = optional; }
    void setInstant(std::optional<Instant> at);

    /// The typed instant; to the millisecond if it was set and not edited. Absent if it is empty
    /// and may be. Problem (data) otherwise, also shown below the field.
    Result<std::optional<Instant>> instant();

    QLineEdit* edit() const { return m_edit; }
    DayPicker* days() const { return m_days; }
    QPushButton* nowButton() const { return m_nowButton; }
    /// The two possible instants of a missing or doubled hour; hidden at other times.
    QPushButton* firstReading() const { return m_first; }
    QPushButton* secondReading() const { return m_second; }
    QString problem() const;
    void showProblem(const QString& sentence);

Q_SIGNALS:
    void edited();

private:
    Result<std::optional<Instant>> read() const;
    Instant now() const;
    void layOut();
    void offerReadings();
    void take(const QString& text);

    Zone m_zone;
    std::function<Instant()> m_now;
    bool m_optional = false;
    std::optional<Instant> m_set;
    DayPicker* m_days = nullptr;
    QString m_setText;
    QLineEdit* m_edit;
    QPushButton* m_nowButton;
    QPushButton* m_first;
    QPushButton* m_second;
    QLabel* m_problem;
};

} // namespace holdband::ui
