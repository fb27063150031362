// A small chart of a meter's mean power between the readings of the last week.
#pragma once

#include "core/results/rounds/rounds_sheet.h"

#include <QWidget>

namespace holdband::ui {

class WeekSparkline : public QWidget {
    Q_OBJECT
public:
    explicit WeekSparkline(const QString& meter, QWidget* parent = nullptr);

    /// Hidden if the week has no rates. `setup`: for the colour.
    void setWeek(results::MeterWeek week, std::optional<int> setup);
    /// Without room it stays hidden.
    void setRoom(bool enough);
    const results::MeterWeek& week() const { return m_week; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    results::MeterWeek m_week;
    bool m_room = true;
    std::optional<int> m_setup;
};

} // namespace holdband::ui
