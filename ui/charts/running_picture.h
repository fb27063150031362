// The cumulative energy of each running batch over the time, with the batches' names at the ends of
// their lines.
#pragma once

#include "core/results/rounds/running_energy.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class RunningPicture : public PlotPicture {
public:
    explicit RunningPicture(results::RunningEnergy energy) : m_energy(std::move(energy)) {}

    bool empty() const { return m_energy.batches.empty(); }
    /// "Pale 2: 0.8 kWh since 10 Mar 18:05", one for each batch.
    QString summary() const;
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.22 * width; }

private:
    Span shown() const;
    double mostKwh() const;
    double msOf(Instant at) const;
    void addTimes(Plot& plot) const;
    void addLine(Plot& plot, const results::RunningBatch& batch) const;
    void addNames(Plot& plot, const QStringList& names) const;

    results::RunningEnergy m_energy;
};

/// Moves the heights of labels, in any order, so that they are at least `least` apart and none is
/// below `bottom`.
void spreadLabels(std::vector<double>& heights, double least, double bottom);

} // namespace holdband::ui
