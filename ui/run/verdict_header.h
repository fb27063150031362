// Shows the verdict in one sentence, with its certainty and coverage below; between them, when the
// beer of an open batch will arrive at a new target.
#pragma once

#include "core/analysis/verdict.h"

#include <QWidget>

class QLabel;

namespace holdband::ui {

class ExplainedLabel;

class VerdictHeader : public QWidget {
    Q_OBJECT
public:
    explicit VerdictHeader(QWidget* parent = nullptr);

    void setVerdict(analysis::Verdict verdict, const QString& headline, const QString& detail);
    QString headline() const;
    /// When the crash or warm-up in progress will arrive; empty: there is none.
    void setArrival(const QString& sentence, const QString& explanation);
    ExplainedLabel* arrival() const { return m_arrival; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    analysis::Verdict m_verdict = analysis::Verdict::notEnoughData;
    QLabel* m_headline;
    ExplainedLabel* m_arrival;
    QLabel* m_detail;
};

} // namespace holdband::ui
