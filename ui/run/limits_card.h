// Tries other limits on the shown run and shows the resulting verdict. The record changes only when
// the user saves them for this batch.
#pragma once

#include "core/results/run/limits_trial.h"
#include "ui/theme/card.h"

#include <memory>

class QLabel;
class QPushButton;
class QSlider;
class QSpinBox;

namespace holdband::ui {

class LimitsCard : public Card {
    Q_OBJECT
public:
    explicit LimitsCard(QWidget* parent = nullptr);

    /// Starts with the batch's own limits.
    void setReview(std::shared_ptr<const results::RunReview> review, bool writable);
    /// The limits chosen now.
    results::Limits limits() const;
    QSlider* tolerance() const { return m_tolerance; }
    QSpinBox* ignoreShorterThan() const { return m_ignoreShorterThan; }
    QSpinBox* gap() const { return m_gap; }
    QSpinBox* dwell() const { return m_dwell; }
    QSpinBox* returnTime() const { return m_return; }
    QPushButton* saveButton() const { return m_save; }
    QPushButton* backButton() const { return m_back; }
    /// The verdict with the chosen limits; empty while they are the batch's own.
    QString verdict() const;

Q_SIGNALS:
    /// Judged with other limits; null: with the batch's own again.
    void tried(const std::shared_ptr<const holdband::results::LimitsTrial>& trial);
    void saveWanted(const holdband::results::Limits& limits);

private:
    void layOut();
    void showOwn();
    void changed();
    void start();
    void take(std::shared_ptr<const results::LimitsTrial> trial);
    void showTolerance();
    double toleranceKelvins() const;

    std::shared_ptr<const results::RunReview> m_review;
    QSlider* m_tolerance;
    QLabel* m_toleranceText;
    QSpinBox* m_ignoreShorterThan;
    QSpinBox* m_gap;
    QSpinBox* m_dwell;
    QSpinBox* m_return;
    QLabel* m_verdict;
    QLabel* m_detail;
    QPushButton* m_save;
    QPushButton* m_back;
    bool m_filling = false;
    double m_kelvinsAStep = 0.1;   ///< of the slider
    bool m_toleranceMoved = false; ///< otherwise each stage has its own
    bool m_running = false;
    bool m_again = false; ///< a choice changed while the judging ran
};

} // namespace holdband::ui
