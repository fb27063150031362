// Shows the verdict in one sentence, with its certainty and coverage below.
#pragma once

#include "core/analysis/verdict.h"

#include <QWidget>

class QLabel;

namespace holdband::ui {

class VerdictHeader : public QWidget {
    Q_OBJECT
public:
    explicit VerdictHeader(QWidget* parent = nullptr);

    void setVerdict(analysis::Verdict verdict, const QString& headline, const QString& detail);
    QString headline() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    analysis::Verdict m_verdict = analysis::Verdict::notEnoughData;
    QLabel* m_headline;
    QLabel* m_detail;
};

} // namespace holdband::ui
