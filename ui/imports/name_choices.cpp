#include "ui/imports/name_choices.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <algorithm>

namespace holdband::ui {

using intake::Meaning;

namespace {

using Names = std::vector<intake::NameChoice>;

void addName(Names& names, const std::string& name)
{
    const bool known = std::any_of(names.begin(), names.end(), [&](const intake::NameChoice& each) {
        return each.name == name;
    });
    if (!name.empty() && !known)
        names.push_back({name, {}});
}

/// Adds the names of the first rows, the only ones known before the full file has been read.
void addFirstNames(const LogState& log, Names& names)
{
    const std::optional<std::size_t> column = log.map.columnOf(Meaning::name);
    for (const intake::PreviewRow& row : log.preview->rows) {
        const bool data = row.line > log.preview->layout.headerLine;
        if (data && column && *column < row.cells.size())
            addName(names, row.cells[*column]);
    }
}

Names namesOf(const LogState& log)
{
    Names names = log.map.names;
    if (log.report) {
        for (const std::string& name : log.report->file.ignoredNames)
            addName(names, name);
    } else {
        addFirstNames(log, names);
    }
    return names;
}

} // namespace

NameChoices::NameChoices(QWidget* parent) : QWidget(parent)
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    m_row = new QHBoxLayout(inner);
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(10);
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFixedHeight(fontMetrics().height() * 2 + 16);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(area);
}

void NameChoices::showLog(const LogState& log, const std::vector<intake::Target>& targets)
{
    const bool isLong = log.preview && log.map.columnOf(Meaning::name).has_value();
    removeBoxes();
    for (const intake::NameChoice& choice : isLong ? namesOf(log) : Names()) {
        add(choice, targets);
    }
    m_row->addStretch();
    setVisible(isLong && !m_boxes.empty());
}

/// Deferred: the signal may come from one of these boxes.
void NameChoices::removeBoxes()
{
    m_boxes.clear();
    while (QLayoutItem* item = m_row->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
}

void NameChoices::add(const intake::NameChoice& choice, const std::vector<intake::Target>& targets)
{
    const QString name = shown(choice.name);
    auto* box = new TargetBox(false, this);
    box->setTargets(targets);
    box->setChoice(choice.of.empty() ? Meaning::ignored : Meaning::reading, choice.of);
    box->setAccessibleName(Words::tr("Rows named %1 are").arg(name));
    QLabel* label = makeLabel(name, "muted", this);
    label->setWordWrap(false);
    m_row->addWidget(label);
    m_row->addWidget(box);
    connect(box, &TargetBox::chosen, this, &NameChoices::changed, Qt::QueuedConnection);
    connect(box, &TargetBox::newSensorWanted, this, [this, name] { Q_EMIT newSensorWanted(name); });
    connect(box, &TargetBox::newMeterWanted, this, [this, name] { Q_EMIT newMeterWanted(name); });
    m_boxes.emplace_back(choice, box);
}

std::vector<intake::NameChoice> NameChoices::choices() const
{
    std::vector<intake::NameChoice> choices;
    for (const auto& [choice, box] : m_boxes)
        choices.push_back(
            {choice.name, box->of(), box->of() == choice.of ? choice.unit : std::nullopt});
    return choices;
}

TargetBox* NameChoices::box(const QString& name) const
{
    for (const auto& [choice, box] : m_boxes) {
        if (shown(choice.name) == name)
            return box;
    }
    return nullptr;
}

} // namespace holdband::ui
