// What the next batch would use, when it would be cold, and whether it can be held: the plan, the
// room and the setups to the left, the answer to the right. Shows results::NextBatch and computes
// nothing.
#pragma once

#include "core/results/forecast/next_batch.h"
#include "core/results/forecast/next_batch_offer.h"
#include "ui/plans/planned_batch.h"

#include <QWidget>
#include <memory>
#include <optional>

class QBoxLayout;
class QLabel;
class QPushButton;

namespace holdband::ui {

class Card;
class EmptyPage;
class NotesCard;
class PictureView;
class PlanCard;
class RoomCard;
class Session;
class SetupTicks;
class TableCard;

class NextBatchPage : public QWidget {
    Q_OBJECT
public:
    explicit NextBatchPage(Session& session, QWidget* parent = nullptr);
    ~NextBatchPage() override;

    /// Fetches the choices and forecasts again.
    void refresh();
    void clear();
    const QString& subtitle() const { return m_subtitle; }
    QString headline() const;
    /// What is shown; null before the first forecast.
    const results::NextBatch* review() const { return m_review ? &*m_review : nullptr; }

    /// What was asked for it; for reports.
    const std::optional<results::NextBatchRequest>& asked() const { return m_shown; }

    PlanCard* plan() const { return m_plan; }
    RoomCard* room() const { return m_room; }
    SetupTicks* setups() const { return m_setups; }
    TableCard* table() const { return m_table; }
    NotesCard* missing() const { return m_missing; }
    PictureView* energyPicture() const { return m_energy; }
    PictureView* pastPicture() const { return m_past; }
    PictureView* crashPicture() const { return m_crash; }
    /// Shown while there is no plan to forecast.
    EmptyPage* empty() const { return m_empty; }
    QPushButton* pitchButton() const { return m_pitch; }

Q_SIGNALS:
    void forecastShown();
    /// A first plan is to be saved.
    void planWanted();
    /// "Pitch this" was pressed.
    void pitchWanted(const holdband::ui::PlannedBatch& planned);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    int scaled(int width) const;
    QWidget* makeBody();
    void showEmpty(bool none);
    QWidget* makeQuestions();
    QWidget* makeAnswers();
    QWidget* makeHeadline();
    void ask();
    /// Problem (data): something typed is refused.
    Result<results::NextBatchRequest> request();
    void fill(const results::NextBatch& review);
    void fillPictures(const results::NextBatch& review);
    void showProblem(const QString& words);
    void showHeadline(const QString& headline, const QString& also, const QString& basis);

    struct Shared; ///< cached by the forecasts on the worker

    Session* m_session;
    std::shared_ptr<Shared> m_shared;
    int m_asked = 0; ///< only the latest question's answer is shown
    PlanCard* m_plan;
    RoomCard* m_room;
    SetupTicks* m_setups;
    QPushButton* m_pitch;
    QLabel* m_headline;
    QLabel* m_also;
    QLabel* m_basis;
    NotesCard* m_missing;
    PictureView* m_energy;
    TableCard* m_table;
    PictureView* m_past;
    Card* m_pastCard;
    QLabel* m_pastWords;
    PictureView* m_crash;
    EmptyPage* m_empty;
    QWidget* m_area = nullptr; ///< questions and answers
    QBoxLayout* m_body = nullptr;
    QBoxLayout* m_rows = nullptr;
    QWidget* m_questions = nullptr;
    std::optional<results::NextBatch> m_review;
    std::optional<results::NextBatchRequest> m_shown; ///< of m_review
    QString m_subtitle;
};

} // namespace holdband::ui
