// One step of a batch, described before it is saved: its time can be changed, Enter saves it.
#pragma once

#include "ui/forms/form_dialog.h"
#include "ui/plans/batch_steps.h"

class QLabel;

namespace holdband::ui {

class InstantField;

class StepDialog : public FormDialog {
    Q_OBJECT
public:
    using Steps = std::function<Result<Step>(Instant)>;

    /// `steps` returns the step for a time. `oldName` is the batch's name in the logbook.
    StepDialog(Session& session, const QString& title, const QString& saveText,
               const UnitFormat& format, std::string oldName, Steps steps,
               QWidget* parent = nullptr);

    /// For a step without a time: hides the time.
    void hideTime();
    /// Sets the questions to ask once before the step is saved.
    void setQuestions(std::function<QStringList(const Batch&)> questions);

    /// "Primary ends at 12 Mar 18:12. Crash begins: hold at 34.0 °F."
    QString words() const;
    InstantField* at() const { return m_at; }

protected:
    void save() override;

private:
    Result<Step> typedStep();
    void say();

    std::string m_oldName;
    Steps m_steps;
    std::function<QStringList(const Batch&)> m_questions;
    QLabel* m_words;
    InstantField* m_at;
};

} // namespace holdband::ui
