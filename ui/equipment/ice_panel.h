// Turns readings in ice water into an offset, and shows the remaining uncertainty.
#pragma once

#include "core/editing/ice_point.h"
#include "core/quantity/instant.h"
#include "ui/forms/unit_format.h"

#include <QWidget>
#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace holdband::ui {

class QuantityField;

class IcePanel : public QWidget {
    Q_OBJECT
public:
    explicit IcePanel(const UnitFormat& format, QWidget* parent = nullptr);

    QLineEdit* readings() const { return m_readings; }
    QuantityField* step() const { return m_step; }
    QPushButton* useButton() const { return m_use; }
    /// Offers that the offset holds for readings that exist already too: from `first` on, which is
    /// the first one since the last check, or of all where there was none.
    void offerEarlier(Instant first, const std::optional<Instant>& lastCheck);
    /// Hidden unless there are earlier readings.
    QRadioButton* fromNow() const { return m_fromNow; }
    QRadioButton* alsoEarlier() const { return m_alsoEarlier; }
    /// From when on the offset holds; absent: from now on.
    std::optional<Instant> from() const;
    QString words() const;

Q_SIGNALS:
    void offsetFound(const holdband::results::IcePoint& point);

private:
    void layOut();
    void say(const Result<results::IcePoint>& point);
    Result<results::IcePoint> typedPoint();

    UnitFormat m_format;
    QLineEdit* m_readings;
    QuantityField* m_step;
    QPushButton* m_use;
    QRadioButton* m_fromNow;
    QRadioButton* m_alsoEarlier;
    Instant m_firstEarlier;
    QLabel* m_words;
};

} // namespace holdband::ui
