// Chooses the meaning of one column, or of one name in a long log.
#pragma once

#include "core/intake/csv/guess.h"

#include <QComboBox>
#include <vector>

namespace holdband::ui {

class TargetBox : public QComboBox {
    Q_OBJECT
public:
    /// `columns`: it may also be the time, a name or a value; else only a sensor or meter.
    TargetBox(bool columns, QWidget* parent = nullptr);

    void setTargets(const std::vector<intake::Target>& targets);
    void setChoice(intake::Meaning meaning, const std::string& of);
    intake::Meaning meaning() const;
    std::string of() const;

Q_SIGNALS:
    void chosen();
    void newSensorWanted();
    void newMeterWanted();

protected:
    /// Opens the list, because stepping through the closed box would choose every item on the way.
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    enum Special { newSensor = 100, newMeter = 101 };
    void add(const QString& words, int what, const QString& of = {});
    void take(int index);

    bool m_columns;
    int m_last = 0; ///< index of the current choice
};

/// The unit of a column's values: the header's unit, or another that suits the quantity.
class UnitBox : public QComboBox {
    Q_OBJECT
public:
    explicit UnitBox(QWidget* parent = nullptr);

    /// `taken`: the unit used if the user chooses none.
    void setKind(SeriesKind kind, std::optional<ReadingUnit> taken);
    void setUnit(std::optional<ReadingUnit> unit);
    std::optional<ReadingUnit> unit() const;
};

} // namespace holdband::ui
