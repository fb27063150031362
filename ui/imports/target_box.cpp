#include "ui/imports/target_box.h"

#include "core/intake/csv/header.h"
#include "ui/words/words.h"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QWheelEvent>

namespace holdband::ui {

using intake::Meaning;

namespace {

constexpr int whatRole = Qt::UserRole;
constexpr int ofRole = Qt::UserRole + 1;

std::vector<ReadingUnit> unitsOf(SeriesKind kind)
{
    switch (kind) {
    case SeriesKind::temperature:
        return {ReadingUnit::celsius, ReadingUnit::fahrenheit};
    case SeriesKind::power:
        return {ReadingUnit::watt, ReadingUnit::kilowatt};
    case SeriesKind::gravity:
        return {ReadingUnit::specificGravity, ReadingUnit::degreePlato};
    case SeriesKind::meter:
    case SeriesKind::intervalEnergy:
        return {ReadingUnit::kilowattHour, ReadingUnit::wattHour};
    }
    return {};
}

} // namespace

TargetBox::TargetBox(bool columns, QWidget* parent) : QComboBox(parent), m_columns(columns)
{
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(8);
    connect(this, &QComboBox::activated, this, &TargetBox::take);
}

void TargetBox::add(const QString& words, int what, const QString& of)
{
    addItem(words);
    setItemData(count() - 1, what, whatRole);
    setItemData(count() - 1, of, ofRole);
}

void TargetBox::setTargets(const std::vector<intake::Target>& targets)
{
    clear();
    add(Words::tr("ignored"), static_cast<int>(Meaning::ignored));
    if (m_columns) {
        add(Words::tr("time"), static_cast<int>(Meaning::time));
        add(Words::tr("time of day"), static_cast<int>(Meaning::clock));
    }
    insertSeparator(count());
    for (const intake::Target& target : targets)
        add(shown(target.name), static_cast<int>(Meaning::reading), shown(target.name));
    if (!targets.empty())
        insertSeparator(count());
    add(Words::tr("a new sensor…"), newSensor);
    add(Words::tr("a new meter…"), newMeter);
    if (m_columns) {
        insertSeparator(count());
        add(Words::tr("names, one a row"), static_cast<int>(Meaning::name));
        add(Words::tr("values of the names"), static_cast<int>(Meaning::value));
        add(Words::tr("units of the values"), static_cast<int>(Meaning::unit));
    }
    view()->setMinimumWidth(view()->sizeHintForColumn(0) + 30);
}

void TargetBox::setChoice(Meaning meaning, const std::string& of)
{
    m_last = 0;
    for (int i = 0; i < count(); ++i) {
        const bool same = itemData(i, whatRole).isValid() &&
                          itemData(i, whatRole).toInt() == static_cast<int>(meaning);
        if (same && (meaning != Meaning::reading || itemData(i, ofRole).toString() == shown(of)))
            m_last = i;
    }
    setCurrentIndex(m_last);
}

Meaning TargetBox::meaning() const
{
    const int what = itemData(currentIndex(), whatRole).toInt();
    return what >= newSensor ? Meaning::ignored : static_cast<Meaning>(what);
}

std::string TargetBox::of() const
{
    return core(itemData(currentIndex(), ofRole).toString());
}

void TargetBox::take(int index)
{
    const int what = itemData(index, whatRole).toInt();
    if (what < newSensor) {
        m_last = index;
        Q_EMIT chosen();
        return;
    }
    setCurrentIndex(m_last);
    if (what == newSensor)
        Q_EMIT newSensorWanted();
    else
        Q_EMIT newMeterWanted();
}

void TargetBox::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Home:
    case Qt::Key_End:
        return showPopup();
    default:
        break;
    }
    const bool letter = !event->text().isEmpty() && event->text().front().isLetterOrNumber() &&
                        !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (!letter)
        return QComboBox::keyPressEvent(event);
    showPopup();
    view()->keyboardSearch(event->text());
}

void TargetBox::wheelEvent(QWheelEvent* event)
{
    event->ignore(); // so that the wheel scrolls the page and not the choice
}

UnitBox::UnitBox(QWidget* parent) : QComboBox(parent)
{
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(6);
}

void UnitBox::setKind(SeriesKind kind, std::optional<ReadingUnit> taken)
{
    clear();
    addItem(taken ? shown(unitSymbol(*taken)) : Words::tr("its unit"), -1);
    for (const ReadingUnit unit : unitsOf(kind))
        addItem(Words::tr("always %1").arg(shown(unitSymbol(unit))), static_cast<int>(unit));
}

void UnitBox::setUnit(std::optional<ReadingUnit> unit)
{
    const int index = unit ? findData(static_cast<int>(*unit)) : 0;
    setCurrentIndex(std::max(index, 0));
}

std::optional<ReadingUnit> UnitBox::unit() const
{
    const int value = currentData().toInt();
    return currentIndex() <= 0 || value < 0 ? std::nullopt
                                            : std::optional(static_cast<ReadingUnit>(value));
}

} // namespace holdband::ui
