// One measure, chosen by the user, for every batch, and the energy that the setups used while idle.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/theme/card.h"

class QComboBox;
class QLabel;

namespace holdband::ui {

class PictureView;

class BatchesCard : public Card {
    Q_OBJECT
public:
    explicit BatchesCard(QWidget* parent = nullptr);

    /// Hidden when two batches are compared, not two setups.
    void setComparison(const results::SideBySide* comparison, const PairSides& sides);
    QComboBox* measure() const { return m_measure; }
    PictureView* picture() const { return m_picture; }

private:
    void draw();
    QString wordsOf(std::size_t measure) const;

    QComboBox* m_measure;
    PictureView* m_picture;
    QLabel* m_idle;
    std::vector<results::MeasureBatches> m_figures;
    std::vector<results::MeasureText> m_lines;
    PairSides m_sides;
};

} // namespace holdband::ui
