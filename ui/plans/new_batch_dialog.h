// Adds a batch in under a minute: the last one's plan, setup and sensors are filled in.
#pragma once

#include "ui/forms/form_dialog.h"
#include "ui/plans/batch_form_data.h"
#include "ui/plans/plan_rows.h"
#include "ui/plans/planned_batch.h"

class QComboBox;

namespace holdband::ui {

class BatchFields;
class PlanEditor;

class NewBatchDialog : public FormDialog {
    Q_OBJECT
public:
    /// `splitFrom`: the new batch is part of that one's beer, in a second vessel; may be empty.
    NewBatchDialog(Session& session, const BatchFormData& formData, const std::string& splitFrom,
                   QWidget* parent = nullptr);

    /// Fills in what was forecast.
    void startFrom(const PlannedBatch& planned);

    BatchFields* fields() const { return m_fields; }
    QComboBox* planChoice() const { return m_choice; }
    PlanEditor* editor() const { return m_editor; }
    /// The name of the batch saved last; empty before.
    const QString& savedName() const { return m_savedName; }

protected:
    void save() override;

private:
    void addParts();
    void offerPlans();
    void takePlan();
    Batch suggested() const;
    std::optional<BatchForecast> forecastFor(const Batch& batch) const;

    BatchFormData m_formData;
    std::string m_splitFrom;
    std::optional<PlannedBatch> m_planned;
    std::vector<PlanValue> m_offered; ///< by the choice's index
    BatchFields* m_fields;
    QComboBox* m_choice;
    PlanEditor* m_editor;
    QString m_savedName;
};

} // namespace holdband::ui
