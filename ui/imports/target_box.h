// The choice of what one column, or one name in a long log, is.
#pragma once

#include "core/intake/csv/guess.h"

#include <QComboBox>
#include <vector>

namespace holdband::ui {

class TargetBox : public QComboBox {
    Q_OBJECT
public:
    /// `columns`: it may also be the time, a name or a value; else only whose readings they are.
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
    /// Opens the list, since stepping through the closed one would choose all on the way.
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    enum Special { newSensor = 100, newMeter = 101 };
    void add(const QString& words, int what, const QString& of = {});
    void take(int index);

    bool m_columns;
    int m_last = 0; ///< the choice that stands
};

/// The unit of a column's values: as its header says, or another that fits what it is.
class UnitBox : public QComboBox {
    Q_OBJECT
public:
    explicit UnitBox(QWidget* parent = nullptr);

    /// `taken`: what it is read in where nobody chose.
    void setKind(SeriesKind kind, std::optional<ReadingUnit> taken);
    void setUnit(std::optional<ReadingUnit> unit);
    std::optional<ReadingUnit> unit() const;
};

} // namespace holdband::ui
