// The verdict of a run: the share of time on target in large type, the figures that people ask for
// next, and the verdict in one sentence with its certainty and coverage. Of an open batch also when
// the beer will arrive at a new target.
#pragma once

#include "core/analysis/verdict.h"
#include "core/results/run/run_glance.h"

#include <QList>
#include <QWidget>

class QBoxLayout;
class QLabel;

namespace holdband::ui {

class ExplainedLabel;
class FigureTile;

class VerdictHeader : public QWidget {
    Q_OBJECT
public:
    explicit VerdictHeader(QWidget* parent = nullptr);

    void setVerdict(analysis::Verdict verdict, const QString& headline, const QString& detail);
    QString headline() const;
    /// The figures of the run; without one: none.
    void setFigures(const results::RunReview* review);
    /// The height that it needs in that width.
    int heightFor(int width);
    /// The page sets its height: else a scroll area around it would give the charts their favourite
    /// height, and not what is left.
    bool hasHeightForWidth() const override { return false; }
    /// When the crash or warm-up in progress will arrive; empty: there is none.
    void setArrival(const QString& sentence, const QString& explanation);
    ExplainedLabel* arrival() const { return m_arrival; }
    FigureTile* lead() const { return m_lead; }
    /// Those that are shown, in their order.
    const QList<FigureTile*>& others() const { return m_others; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeFigures();
    QWidget* makeSentences();
    void placeSentences(int width);

    analysis::Verdict m_verdict = analysis::Verdict::notEnoughData;
    QBoxLayout* m_parts;
    FigureTile* m_lead;
    QList<FigureTile*> m_others;
    QWidget* m_figures;
    QLabel* m_headline;
    ExplainedLabel* m_arrival;
    QLabel* m_detail;
};

} // namespace holdband::ui
