// Cumulative energy of two runs over equal elapsed time: a line and its bounds for each.
#pragma once

#include "core/analysis/comparison.h"

#include <QString>
#include <QWidget>
#include <vector>

class QPainter;

namespace holdband::ui {

class ComparisonChart : public QWidget {
    Q_OBJECT
public:
    explicit ComparisonChart(QWidget* parent = nullptr);

    /// `setupA`, `setupB`: indices for the colours.
    void setCurve(std::vector<analysis::RatioPoint> curve, int setupA, int setupB);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    enum class Which { a, b };
    const analysis::Bounded& figure(const analysis::RatioPoint& point, Which which) const;
    QRectF plot() const;
    QPointF place(double hours, double kwh) const;
    void paintAxes(QPainter& painter);
    void paintSide(QPainter& painter, Which which, int setup, const QString& name);

    std::vector<analysis::RatioPoint> m_curve;
    int m_setupA = 0;
    int m_setupB = 1;
    double m_most = 1.0;
};

} // namespace holdband::ui
