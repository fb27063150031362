// A small field for one quantity, with its unit after it and errors below it. The typed text
// doesn't change until the user edits it; a value that was set and not edited is returned bit for
// bit.
#pragma once

#include "ui/forms/typed_quantity.h"

#include <QWidget>
#include <functional>

class QLabel;
class QLineEdit;

namespace holdband::ui {

class QuantityField : public QWidget {
    Q_OBJECT
public:
    /// `name`: the accessible name.
    QuantityField(Quantity quantity, const QString& name, QWidget* parent = nullptr);
    ~QuantityField() override;

    void setFormat(const UnitFormat& format);
    /// Whether it may be empty. By default it may not.
    void setOptional(bool optional) { m_optional = optional; }
    /// A further rule: returns why a number is refused, or an empty text.
    void setRule(std::function<QString(double)> rule) { m_rule = std::move(rule); }

    /// In the unit of `Quantity`.
    void setNumber(std::optional<double> number);
    template <typename Value>
    void set(const std::optional<Value>& value)
    {
        setNumber(value ? std::optional(plainOf(*value)) : std::nullopt);
    }

    /// The typed number; absent if it is empty and may be. Problem (data) otherwise, also shown
    /// below the field.
    Result<std::optional<double>> number();
    template <typename Value>
    Result<std::optional<Value>> value()
    {
        const auto read = number();
        if (!read)
            return failure(read.error());
        return *read ? std::optional(fromPlain<Value>(**read)) : std::nullopt;
    }

    QLineEdit* edit() const { return m_edit; }
    std::string name() const;
    QString problem() const;
    void showProblem(const QString& sentence);

Q_SIGNALS:
    void edited();

private:
    Result<std::optional<double>> read() const;

    Quantity m_quantity;
    UnitFormat m_format;
    bool m_optional = false;
    std::function<QString(double)> m_rule;
    std::optional<double> m_set;
    QString m_setText;
    QLineEdit* m_edit;
    QLabel* m_unit;
    QLabel* m_problem;
};

/// Refuses numbers that are not above 0.
QString aboveZero(double number);
/// Refuses numbers below 0.
QString notNegative(double number);

} // namespace holdband::ui
