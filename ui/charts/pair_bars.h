// A comparison at a glance: for each pair A's bar over B's, with each batch as a dot, a whisker for
// the bounds, the figure beside it and who is ahead in words.
#pragma once

#include "core/results/comparison/side_glance.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class PairBarsPicture : public PlotPicture {
public:
    PairBarsPicture(results::PairGlance glance, bool ofSetups, PairSides sides);

    bool empty() const { return m_glance.pairs.empty(); }
    const results::PairGlance& glance() const { return m_glance; }
    /// Heading and legend, then one plot for each pair.
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override;
    /// The height that this font needs.
    double heightFor(double width, const QFont& font) const;
    /// The box of a pair.
    QRectF rowBox(std::size_t row, QSizeF size, const QFont& font) const;
    /// What bars, whiskers and dots mean.
    QString legend() const;

private:
    struct Frame;
    Frame frameOf(QSizeF size, const QFont& font) const;
    QStringList legendLines(double width, const QFont& font) const;
    Plot base(QSizeF size, const Frame& frame, const PictureLook& look) const;
    Plot row(std::size_t pair, const Frame& frame, const PictureLook& look) const;
    void addSide(Plot& plot, const results::GlancePair& pair, bool first, double half) const;
    void addWhisker(Plot& plot, const analysis::Bounded& figure, double up, double half) const;
    void addFigure(Plot& plot, const results::GlanceSide& side, double up) const;
    void addTexts(Plot& plot, const results::GlancePair& pair, const Frame& frame) const;

    results::PairGlance m_glance;
    bool m_ofSetups;
    PairSides m_sides;
};

} // namespace holdband::ui
