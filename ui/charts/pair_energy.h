// Two runs over equal elapsed time: cumulative energy of both with their bounds, and below it the
// ratio of A's to B's energy up to then.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

#include <QFontMetrics>
#include <vector>

namespace holdband::ui {

class PairEnergyPicture : public PlotPicture {
public:
    PairEnergyPicture(const results::SideBySide& pair, PairSides sides);

    bool empty() const { return m_curve.size() < 2; }
    /// The energies, and the ratio below them.
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.56 * width; }

private:
    Plot energies(QRectF box, const PictureLook& look) const;
    Plot ratio(QRectF box, const PictureLook& look) const;
    ValueRange ratios() const;
    double mostKwh() const;
    QString endText(bool first) const;
    QString ratioWords() const;
    double endRoom(const QFontMetrics& metrics) const;
    void addCrashes(Plot& plot) const;
    void addEnds(Plot& plot) const;

    std::vector<analysis::RatioPoint> m_curve;
    QString m_since;
    std::optional<double> m_crashA; ///< elapsed hours
    std::optional<double> m_crashB;
    PairSides m_sides;
};

} // namespace holdband::ui
