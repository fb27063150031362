// The cautions of all setups in one card. It is open the first time that a kind of setup is shown,
// and folded later.
#pragma once

#include "core/model/equipment.h"
#include "ui/tables/notes_card.h"

#include <vector>

namespace holdband::ui {

class SafetyCard : public NotesCard {
    Q_OBJECT
public:
    explicit SafetyCard(QWidget* parent = nullptr);

    /// Hidden without a setup in use.
    void setSetups(const std::vector<Setup>& setups);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void noteShown();

    QStringList m_kinds; ///< of the setups in use
};

/// First what only some setups need, with their names; then what all of them do.
QStringList safetySentences(const std::vector<Setup>& setups);

} // namespace holdband::ui
