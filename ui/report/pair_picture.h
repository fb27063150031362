// Two runs over equal elapsed time: cumulative energy of both with their bounds, and beneath it how
// many times B's energy A had used by then.
#pragma once

#include "core/analysis/comparison.h"
#include "ui/report/picture.h"

#include <vector>

namespace holdband::report {

class PairPicture : public Picture {
public:
    /// `a`, `b`: their names.
    PairPicture(std::vector<analysis::RatioPoint> curve, QString a, QString b);

    bool empty() const { return m_curve.size() < 2; }
    void paint(QPainter& painter, QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.56 * width; }

private:
    void paintEnergies(QPainter& painter, QRectF box, const PictureLook& look) const;
    void paintRatio(QPainter& painter, QRectF box, const PictureLook& look) const;
    double mostKwh() const;

    std::vector<analysis::RatioPoint> m_curve;
    QString m_a;
    QString m_b;
};

} // namespace holdband::report
