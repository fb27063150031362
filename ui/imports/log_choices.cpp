#include "ui/imports/log_choices.h"

#include "core/intake/time/header_zone.h"
#include "ui/imports/elapsed_choices.h"
#include "ui/imports/layout_choices.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTimeZone>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

constexpr int patternIndex = 4; ///< of the date orders
constexpr DateOrder orders[] = {DateOrder::yearMonthDay, DateOrder::monthDayYear,
                                DateOrder::dayMonthYear};

/// The zone that the headers of the times name.
std::optional<Zone> zoneInHeader(const LogState& log)
{
    std::vector<std::string_view> headers;
    if (log.preview) {
        for (const auto meaning : {intake::Meaning::time, intake::Meaning::clock}) {
            const auto column = log.map.columnOf(meaning);
            if (column && *column < log.preview->columns.size())
                headers.emplace_back(log.preview->columns[*column].header);
        }
    }
    return headerZone(headers).zone;
}

/// The zone used if the user chooses none.
QString defaultZone(const LogState& log)
{
    return zoneInHeader(log) ? Words::tr("as the header says") : Words::tr("the logbook’s");
}

/// `zone`: the logbook's.
Zone zoneOfTimes(const LogState& log, const Zone& zone)
{
    const auto chosen = log.map.zone ? Zone::named(*log.map.zone) : Result<Zone>(zone);
    return log.map.zone && chosen ? *chosen : zoneInHeader(log).value_or(zone);
}

void setWhole(QComboBox* box, int index)
{
    if (box->currentIndex() != index)
        box->setCurrentIndex(index);
}

} // namespace

LogChoices::LogChoices(QWidget* parent)
    : QWidget(parent), m_layout(new LayoutChoices(this)), m_elapsed(new ElapsedChoices(this)),
      m_zone(new QComboBox(this)), m_order(new QComboBox(this)), m_sign(new QComboBox(this)),
      m_drop(new QComboBox(this)), m_pattern(new QLineEdit(this)),
      m_patternWords(new ElidedLabel({}, this))
{
    fillZones();
    m_order->addItems({Words::tr("as the rows show"), Words::tr("year, month, day"),
                       Words::tr("month, day, year"), Words::tr("day, month, year"),
                       Words::tr("a pattern of your own…")});
    m_sign->addItems({Words::tr("as the rows show"), Words::tr("1,234 is a little over one"),
                      Words::tr("1,234 is over a thousand")});
    m_drop->addItems({Words::tr("not set yet"), Words::tr("it restarted at 0 (reset)"),
                      Words::tr("it passed its top (rollover)")});
    m_pattern->setPlaceholderText(QStringLiteral("dd.MM.yy HH:mm"));
    m_pattern->setMinimumWidth(150);
    m_pattern->setToolTip(Words::tr(
        "yyyy yy year · MM month · MMM its name · dd day · HH hour · hh with a for AM and PM · mm "
        "minute · ss second · 'words' in quotes"));
    m_patternField = field(Words::tr("Pattern"), m_pattern, m_patternWords);
    m_signField = field(Words::tr("The comma"), m_sign);
    m_dropField = field(Words::tr("Where the register falls"), m_drop);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    const auto addRow = [&](std::initializer_list<QWidget*> fields) {
        auto* row = new QHBoxLayout;
        row->setSpacing(14);
        for (QWidget* each : fields)
            row->addWidget(each);
        row->addStretch();
        layout->addLayout(row);
    };
    layout->addWidget(m_layout);
    addRow({field(Words::tr("Zone of its clock"), m_zone), field(Words::tr("Dates"), m_order),
            m_signField});
    addRow({m_patternField, m_dropField});
    layout->addWidget(m_elapsed);
    for (QWidget* each :
         std::initializer_list<QWidget*>{m_patternField, m_signField, m_dropField, m_elapsed})
        each->hide();
    connect(m_elapsed, &ElapsedChoices::changed, this, &LogChoices::changed);
    connect(m_layout, &LayoutChoices::changed, this, &LogChoices::changed);
    for (QComboBox* box : {m_order, m_sign})
        connect(box, &QComboBox::activated, this, [this] {
            showPattern();
            if (!patternChosen() || !m_pattern->text().isEmpty())
                Q_EMIT changed();
            else
                m_pattern->setFocus();
        });
    connect(m_zone, &QComboBox::activated, this, &LogChoices::changed);
    connect(m_zone->lineEdit(), &QLineEdit::returnPressed, this, &LogChoices::changed);
    connect(m_drop, &QComboBox::activated, this, [this](int index) {
        if (index > 0)
            Q_EMIT registerDropChosen(index == 1 ? MeterEvent::reset : MeterEvent::rollover);
    });
    connect(m_pattern, &QLineEdit::textEdited, this, &LogChoices::patternTyped);
    connect(m_pattern, &QLineEdit::returnPressed, this, &LogChoices::changed);
}

void LogChoices::fillZones()
{
    m_zone->addItem(Words::tr("the logbook’s"));
    m_zone->addItem(QStringLiteral("UTC"));
    for (const QByteArray& zone : QTimeZone::availableTimeZoneIds())
        m_zone->addItem(QString::fromLatin1(zone));
    m_zone->setEditable(true);
    m_zone->setInsertPolicy(QComboBox::NoInsert);
    m_zone->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_zone->setMinimumContentsLength(14);
}

QWidget* LogChoices::field(const QString& label, QWidget* control, ElidedLabel* reason)
{
    auto* frame = new QWidget(this);
    auto* layout = new QHBoxLayout(frame);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    QLabel* words = makeLabel(label, "muted", frame);
    words->setWordWrap(false);
    layout->addWidget(words);
    control->setAccessibleName(label);
    layout->addWidget(control);
    if (reason) {
        reason->setMinimumWidth(360);
        layout->addWidget(reason, 1);
    }
    return frame;
}

void LogChoices::showLog(const LogState& log, const Zone& zone)
{
    const intake::ColumnMap& map = log.map;
    if (log.preview)
        m_layout->showLayout(*log.preview, map.layout);
    if (!m_zone->lineEdit()->hasFocus() || !log.problem)
        m_zone->setItemText(0, defaultZone(log));
    if (!m_zone->lineEdit()->hasFocus() || !log.problem)
        m_zone->setCurrentText(map.zone ? shown(*map.zone) : m_zone->itemText(0));
    int order = 0;
    for (int i = 0; i < 3; ++i)
        order = map.dateOrder == orders[i] ? i + 1 : order;
    if (map.timePattern)
        order = patternIndex;
    if (order != 0 || !patternChosen())
        setWhole(m_order, order);
    if (map.timePattern && !m_pattern->hasFocus())
        m_pattern->setText(shown(*map.timePattern));
    setWhole(m_sign, !map.decimalSign ? 0 : *map.decimalSign == ',' ? 1 : 2);
    setWhole(m_drop, !log.registerDrop ? 0 : *log.registerDrop == MeterEvent::reset ? 1 : 2);
    const Decision open = log.problem ? log.problem->decision : Decision::none;
    m_signField->setVisible(map.decimalSign || open == Decision::decimalSign);
    m_dropField->setVisible(log.registerDrop || open == Decision::registerDrop);
    showPattern();
    m_elapsed->showLog(log, zoneOfTimes(log, zone));
}

bool LogChoices::patternChosen() const
{
    return m_order->currentIndex() == patternIndex;
}

void LogChoices::showPattern()
{
    m_patternField->setVisible(patternChosen());
}

void LogChoices::fillIn(intake::ColumnMap& map) const
{
    map.layout = m_layout->layoutRequest();
    const QString zone = m_zone->currentText().trimmed();
    map.zone =
        zone.isEmpty() || zone == m_zone->itemText(0) ? std::nullopt : std::optional(core(zone));
    const int order = m_order->currentIndex();
    map.dateOrder = order >= 1 && order <= 3 ? std::optional(orders[order - 1]) : std::nullopt;
    const QString pattern = m_pattern->text().trimmed();
    map.timePattern =
        patternChosen() && !pattern.isEmpty() ? std::optional(core(pattern)) : std::nullopt;
    const int sign = m_sign->currentIndex();
    map.decimalSign = sign == 0 ? std::nullopt : std::optional(sign == 1 ? ',' : '.');
    m_elapsed->fillIn(map);
}

bool LogChoices::pointAt(Decision decision)
{
    if (m_elapsed->pointAt(decision))
        return true;
    QWidget* control = decision == Decision::layout         ? m_layout->header()
                       : decision == Decision::dateOrder    ? m_order
                       : decision == Decision::zone         ? m_zone
                       : decision == Decision::decimalSign  ? m_sign
                       : decision == Decision::registerDrop ? m_drop
                                                            : nullptr;
    if (control)
        control->setFocus();
    return control != nullptr;
}

QString LogChoices::patternText() const
{
    return m_patternWords->wholeText();
}

void LogChoices::showPatternCheck(const Result<std::vector<PatternTry>>& tries)
{
    QString words;
    bool good = false;
    if (!tries) {
        words = capitalised(shown(tries.error().what));
    } else if (!tries->empty()) {
        const auto bad = std::find_if(tries->begin(), tries->end(),
                                      [](const PatternTry& each) { return !each.fits; });
        good = bad == tries->end();
        const PatternTry& tried = good ? tries->front() : *bad;
        words = good
                    ? Words::tr("✓ %1 is %2").arg(shown(tried.text), shown(tried.result))
                    : Words::tr("line %1: %2 %3")
                          .arg(QString::number(tried.line), shown(tried.text), shown(tried.result));
    } else {
        words = Words::tr("choose first which column has the time");
    }
    setRole(m_patternWords, good ? "muted" : "warn");
    m_patternWords->setWholeText(words);
    m_pattern->setAccessibleDescription(words);
}

} // namespace holdband::ui
