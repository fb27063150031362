#include "ui/run/cause_dialog.h"

#include "core/results/run/causes.h"
#include "core/results/run/explain.h"
#include "ui/forms/choices.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace holdband::ui {

namespace {

constexpr int noCause = -1;

} // namespace

CauseDialog::CauseDialog(Session& session, std::shared_ptr<const results::RunReview> review,
                         ExcursionPlace place, QWidget* parent)
    : FormDialog(session, Words::tr("%1: cause of the excursion").arg(shown(review->batch().name)),
                 Words::tr("Save"), parent),
      m_review(std::move(review)), m_place(place), m_cause(makeChoice(Words::tr("Cause"), this)),
      m_note(makeLine(Words::tr("Note")))
{
    addWide(makeLabel(
        shown(results::explainExcursion(*m_review, place.stage, place.excursion, decimalSign())),
        "muted", this));
    addRow(Words::tr("&Cause"), m_cause);
    addRow(Words::tr("&Note"), m_note);
    m_cause->addItem(Words::tr("not known"), noCause);
    for (const Cause cause : {Cause::lidOpen, Cause::powerCut, Cause::sensorMoved, Cause::warmRoom,
                              Cause::control, Cause::other})
        m_cause->addItem(shown(results::causeWord(cause)), static_cast<int>(cause));
    if (const ExcursionCause* given = results::causeOf(*m_review, place.stage, place.excursion)) {
        m_cause->setCurrentIndex(
            m_cause->findData(given->cause ? static_cast<int>(*given->cause) : noCause));
        m_note->setText(shown(given->note));
    }
    m_cause->setFocus();
    watchFields();
}

void CauseDialog::save()
{
    const int chosen = m_cause->currentData().toInt();
    const auto cause = chosen == noCause ? std::nullopt : std::optional(static_cast<Cause>(chosen));
    commitChange(results::causeEntry(*m_review, m_place.stage, m_place.excursion),
                 [review = m_review, place = m_place, cause,
                  note = core(m_note->text().trimmed())](const store::Change& change) {
                     return results::giveCause(change, *review, place.stage, place.excursion, cause,
                                               note);
                 });
}

} // namespace holdband::ui
