// Two runs over equal elapsed time: cumulative energy of both with their bounds, and below it the
// ratio of A's to B's energy up to then.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/picture.h"

#include <QFontMetrics>
#include <vector>

namespace holdband::ui {

class PlotFrame;

class PairEnergyPicture : public Picture {
public:
    PairEnergyPicture(const results::SideBySide& pair, PairSides sides);

    bool empty() const { return m_curve.size() < 2; }
    void paint(QPainter& painter, QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.56 * width; }

private:
    void paintEnergies(QPainter& painter, QRectF box, const PictureLook& look) const;
    void paintRatio(QPainter& painter, QRectF box, const PictureLook& look) const;
    double mostKwh() const;
    QString endText(bool first) const;
    QString ratioWords() const;
    double endRoom(const QFontMetrics& metrics) const;
    void paintCrashes(QPainter& painter, const PlotFrame& frame, const PictureLook& look) const;

    std::vector<analysis::RatioPoint> m_curve;
    QString m_since;
    std::optional<double> m_crashA; ///< elapsed hours
    std::optional<double> m_crashB;
    PairSides m_sides;
};

} // namespace holdband::ui
