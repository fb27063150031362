// The cost of both: parts, energy of a batch, and the total after a number of batches.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/forms/unit_format.h"
#include "ui/theme/card.h"

class QComboBox;
class QLabel;

namespace holdband::ui {

class PictureView;
class PlainTable;
class QuantityField;
class TableModel;

class MoneyCard : public Card {
    Q_OBJECT
public:
    explicit MoneyCard(QWidget* parent = nullptr);

    /// Null: nothing is compared.
    void setComparison(const results::SideBySide* comparison, const UnitFormat& format,
                       const PairSides& sides);
    QComboBox* scenario() const { return m_scenario; }
    QuantityField* perYear() const { return m_perYear; }
    QuantityField* otherPrice() const { return m_otherPrice; }
    PictureView* picture() const { return m_picture; }
    QString sentence() const;

Q_SIGNALS:
    void weighingWanted(const Weighing& weighing);

private:
    void layOut();
    void draw();
    void takeFields();

    QComboBox* m_scenario;
    QLabel* m_sentence;
    PictureView* m_picture;
    TableModel* m_figures;
    PlainTable* m_table;
    QuantityField* m_perYear;
    QuantityField* m_otherPrice;
    QLabel* m_remarks;
    results::Money m_money;
    results::MoneyText m_text;
    Weighing m_weighing;
    std::optional<double> m_shownPrice = -1.0; ///< the second price of the comparison shown last
    PairSides m_sides;
    QString m_currency;
};

} // namespace holdband::ui
