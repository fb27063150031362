#include "ui/forms/quantity_field.h"

#include "core/text/phrase.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

namespace holdband::ui {

QuantityField::QuantityField(Quantity quantity, const QString& name, QWidget* parent)
    : QWidget(parent), m_quantity(quantity), m_edit(new QLineEdit(this)), m_unit(new QLabel(this)),
      m_problem(makeLabel({}, "warn", this))
{
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setHorizontalSpacing(6);
    layout->setVerticalSpacing(2);
    layout->addWidget(m_edit, 0, 0);
    layout->addWidget(m_unit, 0, 1);
    layout->setColumnStretch(2, 1);
    layout->addWidget(m_problem, 1, 0, 1, 3);
    m_edit->setFixedWidth(m_edit->fontMetrics().horizontalAdvance(QStringLiteral("000000000")) +
                          24);
    m_edit->setAccessibleName(name);
    setFocusProxy(m_edit);
    setRole(m_unit, "muted");
    m_problem->hide();
    setFormat(m_format);
    connect(m_edit, &QLineEdit::textEdited, this, [this] {
        showProblem({});
        Q_EMIT edited();
    });
    connect(m_edit, &QLineEdit::editingFinished, this, [this] { number(); });
}

/// See ~InstantField.
QuantityField::~QuantityField()
{
    m_edit->disconnect(this);
}

void QuantityField::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_unit->setText(unitOf(m_quantity, format));
    m_edit->setAccessibleDescription(m_unit->text());
    if (m_set)
        setNumber(m_set);
}

void QuantityField::setNumber(std::optional<double> number)
{
    m_set = number;
    m_setText = number ? typedText(m_quantity, *number, m_format) : QString();
    m_edit->setText(m_setText);
    showProblem({});
}

Result<std::optional<double>> QuantityField::read() const
{
    if (m_set && m_edit->text() == m_setText)
        return m_set;
    if (m_edit->text().trimmed().isEmpty()) {
        if (m_optional)
            return std::optional<double>();
        return dataProblem(Phrase::tr("nothing is typed here"));
    }
    const auto number = readTyped(m_quantity, m_edit->text(), m_format);
    if (!number)
        return failure(number.error());
    const QString refused = m_rule ? m_rule(*number) : QString();
    if (!refused.isEmpty())
        return dataProblem(core(refused));
    return std::optional(*number);
}

Result<std::optional<double>> QuantityField::number()
{
    auto read = this->read();
    showProblem(read ? QString() : sentence(read.error()));
    return read;
}

std::string QuantityField::name() const
{
    return core(m_edit->accessibleName());
}

QString QuantityField::problem() const
{
    return m_problem->text();
}

void QuantityField::showProblem(const QString& sentence)
{
    m_problem->setText(sentence);
    m_problem->setVisible(!sentence.isEmpty());
    setRole(m_edit, sentence.isEmpty() ? "" : "refused");
}

QString aboveZero(double number)
{
    return number > 0.0 ? QString() : Words::tr("it must be above 0");
}

QString notNegative(double number)
{
    return number >= 0.0 ? QString() : Words::tr("it can't be negative");
}

} // namespace holdband::ui
