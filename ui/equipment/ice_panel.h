// Turns readings in ice water into an offset, and says the doubt that remains.
#pragma once

#include "core/editing/ice_point.h"
#include "ui/forms/manner.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace holdband::ui {

class QuantityField;

class IcePanel : public QWidget {
    Q_OBJECT
public:
    explicit IcePanel(const Manner& manner, QWidget* parent = nullptr);

    QLineEdit* readings() const { return m_readings; }
    QuantityField* step() const { return m_step; }
    QPushButton* useButton() const { return m_use; }
    QString words() const;

Q_SIGNALS:
    void offsetFound(const holdband::review::IcePoint& point);

private:
    void layOut();
    void say(const Result<review::IcePoint>& point);
    Result<review::IcePoint> typedPoint();

    Manner m_manner;
    QLineEdit* m_readings;
    QuantityField* m_step;
    QPushButton* m_use;
    QLabel* m_words;
};

} // namespace holdband::ui
