#include "ui/readings/readings_dialog.h"

#include "core/store/equipment.h"
#include "core/store/hand_readings.h"
#include "core/store/readings.h"
#include "core/store/value_corrections.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "ui/readings/readings_words.h"
#include "ui/session/session.h"
#include "ui/tables/list_table.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

constexpr std::size_t mostShown = 3'000;
constexpr auto firstStretch = std::chrono::days{1};

/// `span` absent: the last day that has readings.
Result<ReadingsView> readView(const store::LogbookFile& file, const std::string& wanted,
                              const std::optional<Span>& span)
{
    ReadingsView view;
    auto sensors = store::readSensors(file);
    HOLDBAND_TRY(sensors);
    auto settings = store::readSettings(file);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    view.zone = *zone;
    for (const Sensor& sensor : *sensors)
        view.sensors.push_back(sensor.name);
    if (view.sensors.empty())
        return view;
    const bool known =
        std::find(view.sensors.begin(), view.sensors.end(), wanted) != view.sensors.end();
    view.sensor = known ? wanted : view.sensors.front();
    auto last = store::lastReadingAt(file, view.sensor);
    HOLDBAND_TRY(last);
    const Instant end = last->value_or(file.now());
    view.span = span.value_or(Span{end - firstStretch, end});
    auto list = store::listReadings(file, view.sensor, view.span, mostShown);
    HOLDBAND_TRY(list);
    view.list = std::move(*list);
    auto exclusions = store::readExclusions(file);
    HOLDBAND_TRY(exclusions);
    for (const store::Exclusion& exclusion : *exclusions) {
        const bool touches =
            exclusion.span.start <= view.span.end && view.span.start <= exclusion.span.end;
        if (exclusion.sensor == view.sensor && touches)
            view.exclusions.push_back(exclusion);
    }
    return view;
}

QString typedTime(Instant at, const Zone& zone)
{
    return shown(localIso(at, zone)).left(19).replace(QLatin1Char('T'), QLatin1Char(' '));
}

} // namespace

ReadingsDialog::ReadingsDialog(Session& session, QWidget* parent)
    : QDialog(parent), m_session(&session), m_readings(new TableModel(this)),
      m_sensor(new QComboBox(this)), m_from(new QLineEdit(this)), m_to(new QLineEdit(this)),
      m_table(makeListTable(QStringLiteral("Readings"), m_readings, this)),
      m_value(new QLineEdit(this)), m_why(new QLineEdit(this)),
      m_leaveOut(new QPushButton(QStringLiteral("&Leave the chosen ones out"), this)),
      m_bringBack(new QPushButton(QStringLiteral("&Bring back"), this)),
      m_correct(new QPushButton(QStringLiteral("&Correct the chosen one"), this)),
      m_message(makeLabel({}, "muted", this))
{
    setWindowTitle(QStringLiteral("Readings"));
    resize(900, 640);
    m_sensor->setAccessibleName(QStringLiteral("Sensor"));
    m_from->setAccessibleName(QStringLiteral("From"));
    m_to->setAccessibleName(QStringLiteral("To"));
    m_value->setAccessibleName(QStringLiteral("The right value"));
    m_value->setPlaceholderText(QStringLiteral("right value"));
    m_value->setMaximumWidth(130);
    m_why->setAccessibleName(QStringLiteral("Why"));
    m_why->setPlaceholderText(QStringLiteral("why: probe lifted, battery low …"));
    widen(*m_table, 5);
    layOut();
    connectParts();
    refresh();
}

void ReadingsDialog::layOut()
{
    auto* head = new QHBoxLayout;
    head->addWidget(m_sensor, 2);
    head->addWidget(new QLabel(QStringLiteral("from"), this));
    head->addWidget(m_from, 1);
    head->addWidget(new QLabel(QStringLiteral("to"), this));
    head->addWidget(m_to, 1);
    auto* mend = new QHBoxLayout;
    mend->addWidget(m_value);
    mend->addWidget(m_why, 1);
    for (QPushButton* button : {m_correct, m_leaveOut, m_bringBack}) {
        button->setAutoDefault(false);
        button->setEnabled(!m_session->readOnly());
        mend->addWidget(button);
    }
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
    close->button(QDialogButtonBox::Close)->setAutoDefault(false);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addLayout(mend);
    column->addWidget(m_message);
    column->addWidget(close);
}

void ReadingsDialog::connectParts()
{
    connect(m_sensor, &QComboBox::activated, this, [this] {
        m_from->clear(); // another sensor's last day
        m_to->clear();
        refresh();
    });
    connect(m_from, &QLineEdit::returnPressed, this, &ReadingsDialog::refresh);
    connect(m_to, &QLineEdit::returnPressed, this, &ReadingsDialog::refresh);
    connect(m_leaveOut, &QPushButton::clicked, this, &ReadingsDialog::leaveOut);
    connect(m_bringBack, &QPushButton::clicked, this, &ReadingsDialog::bringBack);
    connect(m_correct, &QPushButton::clicked, this, &ReadingsDialog::correct);
    connect(m_session, &Session::changed, this, &ReadingsDialog::refresh);
}

std::optional<Span> ReadingsDialog::typedSpan()
{
    const auto from = parseTime(core(m_from->text()), m_view.zone);
    const auto to = parseTime(core(m_to->text()), m_view.zone);
    if (!from || !to || *to < *from) {
        say(!from ? sentence(from.error())
                  : (!to ? sentence(to.error())
                         : QStringLiteral("The stretch ends before it begins.")));
        (from ? m_to : m_from)->setFocus();
        return std::nullopt;
    }
    return Span{*from, *to};
}

void ReadingsDialog::refresh()
{
    std::optional<Span> span;
    if (!m_from->text().isEmpty() || !m_to->text().isEmpty()) {
        span = typedSpan();
        if (!span)
            return;
    }
    const std::string sensor = core(m_sensor->currentText());
    m_session->ask<ReadingsView>(
        this,
        [sensor, span](const store::LogbookFile& file) { return readView(file, sensor, span); },
        [this](Result<ReadingsView> view) {
            if (view)
                take(std::move(*view));
            else
                say(sentence(view.error()));
        });
}

void ReadingsDialog::take(ReadingsView view)
{
    m_view = std::move(view);
    m_sensor->clear();
    for (const std::string& sensor : m_view.sensors)
        m_sensor->addItem(shown(sensor));
    m_sensor->setCurrentText(shown(m_view.sensor));
    m_from->setText(typedTime(m_view.span.start, m_view.zone));
    m_to->setText(typedTime(m_view.span.end + std::chrono::milliseconds{999}, m_view.zone));
    m_readings->setWords(readingWords(m_view));
    const auto count = static_cast<int>(m_view.list.readings.size());
    if (m_view.sensors.empty())
        say(QStringLiteral("No sensor is on record yet. Add one on the Equipment page."));
    else
        say(m_view.list.more ? QStringLiteral("The first %1 of this stretch; choose a shorter one "
                                              "to see the rest.")
                                   .arg(count)
                             : QStringLiteral("%1 readings in this stretch.").arg(count));
}

std::optional<Span> ReadingsDialog::chosenSpan() const
{
    const QModelIndexList rows = m_table->selectionModel()->selectedRows();
    std::optional<Span> span;
    for (const QModelIndex& row : rows) {
        const Instant at = m_view.list.readings[static_cast<std::size_t>(row.row())].at;
        span = span ? Span{std::min(span->start, at), std::max(span->end, at)} : Span{at, at};
    }
    return span;
}

void ReadingsDialog::leaveOut()
{
    const auto span = chosenSpan();
    if (!span)
        return say(QStringLiteral("Choose the readings to leave out in the table first."));
    if (m_why->text().trimmed().isEmpty()) {
        say(QStringLiteral("Say why they are left out: the reason stays with them."));
        m_why->setFocus();
        return;
    }
    const store::Exclusion exclusion{m_view.sensor, *span, core(m_why->text().trimmed()), {}};
    save("left out a stretch of " + m_view.sensor, [exclusion](const store::Change& change) {
        return store::addExclusion(change, exclusion);
    });
}

void ReadingsDialog::bringBack()
{
    const auto span = chosenSpan();
    std::vector<store::ExclusionId> ids;
    for (const store::Exclusion& exclusion : m_view.exclusions) {
        if (span && exclusion.span.start <= span->end && span->start <= exclusion.span.end)
            ids.push_back(exclusion.id);
    }
    if (ids.empty())
        return say(QStringLiteral("Choose a reading that was left out in the table first."));
    save("brought back a stretch of " + m_view.sensor, [ids](const store::Change& change) -> Done {
        for (const store::ExclusionId id : ids)
            HOLDBAND_TRY(store::removeExclusion(change, id));
        return {};
    });
}

void ReadingsDialog::correct()
{
    const QModelIndexList rows = m_table->selectionModel()->selectedRows();
    if (rows.size() != 1)
        return say(QStringLiteral("Choose the one reading to correct in the table first."));
    const auto number = parseTypedNumber(core(m_value->text().trimmed()), decimalSign());
    if (!number) {
        say(sentence(number.error()));
        m_value->setFocus();
        return;
    }
    const store::ListedReading reading =
        m_view.list.readings[static_cast<std::size_t>(rows.front().row())];
    const std::string why = core(m_why->text().trimmed());
    save("corrected a reading of " + m_view.sensor,
         [reading, number = *number, why, sensor = m_view.sensor](const store::Change& change) {
             if (reading.hand)
                 return store::correctHandReading(change, *reading.hand, number.value,
                                                  number.decimals, change.at(), why);
             return store::addValueCorrection(
                 change, {sensor, reading.at, number.value, reading.unit, change.at(), why});
         });
}

void ReadingsDialog::save(const std::string& what, std::function<Done(const store::Change&)> work)
{
    const store::ActWords words{what, core(m_why->text().trimmed()), store::ActKind::edit, {}};
    m_session->change<bool>(
        this,
        [words, work = std::move(work)](const store::LogbookFile& file) -> Result<bool> {
            auto change = store::Change::begin(file, words);
            HOLDBAND_TRY(change);
            HOLDBAND_TRY(work(*change));
            HOLDBAND_TRY(change->commit());
            return true;
        },
        [this](Result<bool> kept) {
            if (!kept)
                return say(sentence(kept.error()));
            m_value->clear();
            m_why->clear();
            m_session->announceChange(); // which refreshes this dialog too
        });
}

QString ReadingsDialog::message() const
{
    return m_message->text();
}

void ReadingsDialog::say(const QString& words)
{
    m_message->setText(words);
    m_message->setAccessibleName(words);
}

} // namespace holdband::ui
