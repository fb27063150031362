// Edits a stored batch: its details, its plan and the changes of it, its sensors and vessels over
// time, and a comparison of the planned with the real stages.
#pragma once

#include "ui/forms/form_dialog.h"
#include "ui/plans/batch_form_data.h"
#include "ui/plans/plan_rows.h"

class QLineEdit;
class QPushButton;
class QRadioButton;
class QTabWidget;

namespace holdband::ui {

class BatchFields;
class EditTable;
class InstantField;
class PlanEditor;

class BatchDialog : public FormDialog {
    Q_OBJECT
public:
    /// `batch` must be in `world`.
    BatchDialog(Session& session, const BatchFormData& formData, const Batch& batch,
                QWidget* parent = nullptr);

    QTabWidget* tabs() const { return m_tabs; }
    BatchFields* fields() const { return m_fields; }
    PlanEditor* editor() const { return m_editor; }
    QRadioButton* fromNowOn() const { return m_fromNowOn; }
    QRadioButton* forThePast() const { return m_forThePast; }
    InstantField* changeFrom() const { return m_from; }
    QLineEdit* why() const { return m_why; }
    EditTable* uses() const { return m_uses; }
    QPushButton* splitButton() const { return m_split; }
    QPushButton* removeButton() const { return m_remove; }

Q_SIGNALS:
    void splitWanted(const QString& batch);

protected:
    void save() override;

private:
    QWidget* makeDetails();
    QWidget* makePlan();
    QWidget* makeUses();
    QWidget* makeDone();
    void fill();
    void saveNamedPlan();
    void remove();
    Result<Batch> typedBatch();
    Result<Batch> withTypedPlan(Batch batch);
    bool hasStarted() const;

    BatchFormData m_formData;
    Batch m_batch;
    bool m_removeAsked = false;
    QTabWidget* m_tabs;
    BatchFields* m_fields;
    PlanEditor* m_editor;
    QRadioButton* m_fromNowOn;
    QRadioButton* m_forThePast;
    InstantField* m_from;
    QLineEdit* m_why;
    EditTable* m_uses;
    QPushButton* m_split;
    QPushButton* m_remove;
};

} // namespace holdband::ui
