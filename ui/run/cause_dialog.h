// Edits the cause of an excursion: a choice of common causes, and a note.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/forms/form_dialog.h"

#include <memory>

class QComboBox;

namespace holdband::ui {

/// Identifies one of the review's excursions: indices into figures.judged.asPlanned.
struct ExcursionPlace {
    std::size_t stage = 0;
    std::size_t excursion = 0;
};

class CauseDialog : public FormDialog {
    Q_OBJECT
public:
    CauseDialog(Session& session, std::shared_ptr<const results::RunReview> review,
                ExcursionPlace place, QWidget* parent = nullptr);

    QComboBox* cause() const { return m_cause; }
    QLineEdit* note() const { return m_note; }

protected:
    void save() override;

private:
    std::shared_ptr<const results::RunReview> m_review;
    ExcursionPlace m_place;
    QComboBox* m_cause;
    QLineEdit* m_note;
};

} // namespace holdband::ui
