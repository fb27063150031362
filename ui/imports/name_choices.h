// For a long log: the sensor or meter for each name.
#pragma once

#include "ui/imports/log_state.h"
#include "ui/imports/target_box.h"

#include <QWidget>
#include <utility>
#include <vector>

class QHBoxLayout;

namespace holdband::ui {

class NameChoices : public QWidget {
    Q_OBJECT
public:
    explicit NameChoices(QWidget* parent = nullptr);

    /// Hidden if the log is not long.
    void showLog(const LogState& log, const std::vector<intake::Target>& targets);
    std::vector<intake::NameChoice> choices() const;
    TargetBox* box(const QString& name) const;

Q_SIGNALS:
    void changed();
    void newSensorWanted(const QString& name);
    void newMeterWanted(const QString& name);

private:
    void removeBoxes();
    void add(const intake::NameChoice& choice, const std::vector<intake::Target>& targets);

    QHBoxLayout* m_row;
    std::vector<std::pair<intake::NameChoice, TargetBox*>> m_boxes;
};

} // namespace holdband::ui
