// The room that the next batch will stand in: a month or a stretch of the room's record, or typed.
#pragma once

#include "core/results/forecast/next_batch.h"
#include "core/results/forecast/next_batch_offer.h"
#include "ui/forms/unit_format.h"
#include "ui/theme/card.h"

#include <variant>
#include <vector>

class QComboBox;
class QLabel;

namespace holdband::ui {

class InstantField;
class QuantityField;

using RoomChoice = std::variant<analysis::TypedRoom, results::RoomStretch>;

class RoomCard : public Card {
    Q_OBJECT
public:
    explicit RoomCard(QWidget* parent = nullptr);

    /// Fills the choices; what was chosen and typed stays. At first the month of the record is
    /// chosen that is the calendar's now, else the latest whole one.
    void setOffer(const results::NextBatchOffer& offer, const UnitFormat& format, Instant now);
    /// Problem (data): something typed is refused; its field says why.
    Result<RoomChoice> room();
    /// The mean and the swing of what was picked.
    void showRoom(const results::NextRoom& room, const QString& words);
    void clearRoom();

    QComboBox* choice() const { return m_choice; }
    QuantityField* mean() const { return m_mean; }
    QuantityField* swing() const { return m_swing; }
    InstantField* from() const { return m_from; }
    InstantField* to() const { return m_to; }

Q_SIGNALS:
    void changed();

private:
    void layOut();
    void offerMonths(const results::NextBatchOffer& offer);
    void chooseFirst(const results::NextBatchOffer& offer, Instant now);
    bool isTyped() const;
    bool isStretch() const;
    void showFields();

    std::vector<results::RoomMonth> m_months; ///< by the choice's index; then a stretch, then typed
    bool m_offered = false;
    QComboBox* m_choice;
    QWidget* m_stretch;
    InstantField* m_from;
    InstantField* m_to;
    QuantityField* m_mean;
    QuantityField* m_swing;
    QLabel* m_words;
};

} // namespace holdband::ui
