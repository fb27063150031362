// The first steps in an empty logbook: five steps, each with its button; completed ones have a
// tick.
#pragma once

#include "core/store/logbook_file.h"

#include <QWidget>
#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;

namespace holdband::ui {

enum class FirstStep { setup, meter, sensor, batch, reading };

/// The steps that have been completed.
struct StepsTaken {
    bool setup = false;
    bool meter = false;
    bool sensor = false;
    bool batch = false;
    bool reading = false;
};
Result<StepsTaken> readStepsTaken(const store::LogbookFile& logbook);

class FirstSteps : public QWidget {
    Q_OBJECT
public:
    explicit FirstSteps(QWidget* parent = nullptr);

    void setTaken(const StepsTaken& taken);
    QPushButton* button(FirstStep step) const;

Q_SIGNALS:
    void wanted(holdband::ui::FirstStep step);

private:
    struct Line {
        QLabel* mark;
        QPushButton* button;
    };
    void addStep(QGridLayout* grid, FirstStep step, const QString& words, const QString& reason);

    std::vector<Line> m_lines;
};

} // namespace holdband::ui
