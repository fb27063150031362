// One tariff of the prices dialog: its start, its flat price, its time-of-use windows.
#pragma once

#include "core/model/equipment.h"
#include "core/problem.h"
#include "ui/forms/unit_format.h"

#include <QWidget>
#include <functional>

class QPushButton;

namespace holdband::ui {

class EditTable;
class InstantField;
class QuantityField;

class TariffPage : public QWidget {
    Q_OBJECT
public:
    /// `from` absent: the first tariff, which applies until the first change.
    TariffPage(const UnitFormat& format, std::function<Instant()> now, std::optional<Instant> from,
               const Tariff& tariff, QWidget* parent = nullptr);

    bool isFirst() const { return m_from == nullptr; }
    /// On a Problem the field gets the focus.
    Result<Tariff> tariff();
    Result<Instant> from();

    QuantityField* price() const { return m_price; }
    EditTable* windows() const { return m_windows; }
    InstantField* fromField() const { return m_from; }
    QPushButton* removeButton() const { return m_remove; }

private:
    void layOut();

    UnitFormat m_format;
    Tariff m_tariff;
    InstantField* m_from = nullptr;
    QuantityField* m_price;
    EditTable* m_windows;
    QPushButton* m_remove = nullptr;
};

} // namespace holdband::ui
