// The setups that a forecast is made for, as boxes to tick.
#pragma once

#include "core/results/forecast/next_batch_offer.h"
#include "ui/theme/card.h"

#include <string>
#include <vector>

class QCheckBox;

namespace holdband::ui {

class SetupTicks : public Card {
    Q_OBJECT
public:
    explicit SetupTicks(QWidget* parent = nullptr);

    /// What was unticked stays so. At first those in use are ticked.
    void setOffer(const results::NextBatchOffer& offer);
    /// In the logbook's order.
    std::vector<std::string> ticked() const;
    QCheckBox* box(int index) const { return m_boxes.at(static_cast<std::size_t>(index)); }

Q_SIGNALS:
    void changed();

private:
    std::vector<std::string> m_names; ///< of the boxes
    std::vector<QCheckBox*> m_boxes;
};

} // namespace holdband::ui
