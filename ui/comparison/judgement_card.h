// The judgement sheet: criteria with the user's weights, scores of both, the total, and what would
// change the result.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/theme/card.h"

#include <vector>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSlider;

namespace holdband::ui {

class JudgementCard : public Card {
    Q_OBJECT
public:
    explicit JudgementCard(QWidget* parent = nullptr);

    /// Null: nothing is compared.
    void setComparison(const results::SideBySide* comparison, const PairSides& sides,
                       bool writable);
    /// The slider for a criterion's weight; null if there is none of that name.
    /// The value beside the slider.
    QString shownWeight(const QString& criterion) const;
    QSlider* weight(const QString& criterion) const;
    QLineEdit* newCriterion() const { return m_newName; }
    QPushButton* addButton() const { return m_add; }
    QString sentence() const;

Q_SIGNALS:
    void weighingWanted(const Weighing& weighing);

private:
    struct Row {
        std::string name;
        QSlider* weight;
        QLabel* shownWeight;
        QLabel* a;
        QLabel* b;
    };
    void layOut();
    void rebuild(const std::vector<results::Criterion>& criteria,
                 const std::vector<results::CriterionText>& texts, bool writable);
    void addRow(const results::Criterion& criterion, const results::CriterionText& text,
                bool writable);
    void fillRow(const Row& row, const results::Criterion& criterion,
                 const results::CriterionText& text) const;
    void takeWeights();
    void addCriterion();
    void removeCriterion(const std::string& name);

    QLabel* m_sentence;
    QGridLayout* m_grid;
    QLabel* m_turning;
    QLabel* m_rule;
    QLineEdit* m_newName;
    QPushButton* m_add;
    std::vector<Row> m_rows;
    Weighing m_weighing;
    PairSides m_sides;
};

} // namespace holdband::ui
