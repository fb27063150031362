// Shows "the time is 18:12 for all", with a field to change it.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"
#include "core/text/zone.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace holdband::ui {

class RoundTime : public QWidget {
    Q_OBJECT
public:
    explicit RoundTime(QWidget* parent = nullptr);

    /// `doubt`: the logbook's, of a time that is typed.
    void setNow(Instant now, const Zone& zone, Milliseconds doubt);
    /// `now`, unless another time was typed. Problem (data): the typed text is no time.
    Result<Instant> at(Instant now) const;
    /// Absent if it is now, or no time.
    std::optional<Instant> typed() const;
    void backToNow();
    QLineEdit* field() const { return m_field; }
    QPushButton* button() const { return m_change; }

Q_SIGNALS:
    /// Enter was pressed in the field.
    void entered();
    /// The time changed back to now.
    void changed();

private:
    void startTyping();

    Zone m_zone;
    Instant m_now;
    Milliseconds m_doubt{0};
    QLabel* m_words;
    QLineEdit* m_field;
    QPushButton* m_change;
};

} // namespace holdband::ui
