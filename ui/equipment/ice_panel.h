// Turns readings in ice water into an offset, and shows the remaining uncertainty.
#pragma once

#include "core/editing/ice_point.h"
#include "ui/forms/unit_format.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace holdband::ui {

class QuantityField;

class IcePanel : public QWidget {
    Q_OBJECT
public:
    explicit IcePanel(const UnitFormat& format, QWidget* parent = nullptr);

    QLineEdit* readings() const { return m_readings; }
    QuantityField* step() const { return m_step; }
    QPushButton* useButton() const { return m_use; }
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
    QLabel* m_words;
};

} // namespace holdband::ui
