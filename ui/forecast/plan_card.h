// The plan of the next batch: a named one, like a past batch, or drawn; volume and gravities.
#pragma once

#include "core/results/forecast/next_batch_offer.h"
#include "ui/forms/unit_format.h"
#include "ui/plans/plan_rows.h"
#include "ui/theme/card.h"

#include <optional>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;

namespace holdband::ui {

class PlanDrawing;
class QuantityField;

class PlanCard : public Card {
    Q_OBJECT
public:
    explicit PlanCard(QWidget* parent = nullptr);

    /// Fills the choices; what was chosen and typed stays.
    void setOffer(const results::NextBatchOffer& offer, const UnitFormat& format);
    bool hasPlan() const { return m_choice && !m_offered.empty(); }
    /// Problem (data): something typed is refused; its field says why.
    Result<results::NextPlan> plan();

    QComboBox* choice() const { return m_choice; }
    QuantityField* volume() const { return m_volume; }
    QuantityField* originalGravity() const { return m_original; }
    QuantityField* finalGravity() const { return m_final; }
    QCheckBox* shared() const { return m_shared; }
    QPushButton* drawButton() const { return m_draw; }
    PlanDrawing* drawing() const { return m_drawing; }

Q_SIGNALS:
    void changed();

private:
    void layOut();
    void connectParts();
    void offer(results::NextPlan plan, const QString& text);
    void takeChoice();
    void takeDrawn(const PlanValue& plan);
    void openEditor();
    void showPlan();
    const results::NextPlan& chosen() const;

    UnitFormat m_format;
    std::vector<results::NextPlan> m_offered; ///< by the choice's index
    std::optional<PlanValue> m_drawn;
    QComboBox* m_choice;
    QPushButton* m_draw;
    PlanDrawing* m_drawing;
    QuantityField* m_volume;
    QuantityField* m_original;
    QuantityField* m_final;
    QCheckBox* m_shared;
};

} // namespace holdband::ui
