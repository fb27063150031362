// Everything about a comparison that few need at once: all measures, notes on fairness, how the
// same weather was computed, deviations, batch by batch. Each card folds.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"

#include <QWidget>
#include <vector>

class QLabel;

namespace holdband::ui {

class BatchesCard;
class Card;
class NotesCard;
class PictureView;
class TableCard;

class DetailsPanel : public QWidget {
    Q_OBJECT
public:
    explicit DetailsPanel(QWidget* parent = nullptr);

    /// Null: nothing is compared.
    void setComparison(const results::SideBySide* comparison, const PairSides& sides);
    void setOpen(bool open);
    /// No card is folded.
    bool isOpen() const;

    TableCard* table() const { return m_table; }
    NotesCard* notes() const { return m_notes; }
    Card* weather() const { return m_weather; }
    Card* deviations() const { return m_deviations; }
    BatchesCard* batches() const { return m_batches; }
    /// What the sentences about energy and temperature say.
    QString sentences() const;

Q_SIGNALS:
    /// The user folded or unfolded a card.
    void folded();

private:
    void layOut();
    std::vector<Card*> cards() const;
    void fillTexts(const results::SideBySide& comparison);
    void fillDeviations(const results::SideBySide& comparison, const PairSides& sides);

    TableCard* m_table;
    QLabel* m_sentences;
    NotesCard* m_notes;
    Card* m_weather;
    QLabel* m_weatherText;
    Card* m_deviations;
    PictureView* m_deviationPicture;
    PictureView* m_spreadPicture;
    BatchesCard* m_batches;
};

} // namespace holdband::ui
