// The price of energy: a list of tariffs, each with a start date.
#pragma once

#include "ui/equipment/equipment_tables.h"
#include "ui/forms/form_dialog.h"
#include "ui/forms/unit_format.h"

class QLineEdit;
class QPushButton;
class QTabWidget;

namespace holdband::ui {

class TariffPage;

class PricesDialog : public FormDialog {
    Q_OBJECT
public:
    PricesDialog(Session& session, const Equipment& equipment, QWidget* parent = nullptr);

    QLineEdit* currency() const { return m_currency; }
    QPushButton* addButton() const { return m_add; }
    QTabWidget* tabs() const { return m_tabs; }
    TariffPage* page(int index) const;

protected:
    void save() override;

private:
    void addPage(std::optional<Instant> from, const Tariff& tariff);
    void removePage(TariffPage* page);
    void nameTabs();
    Result<LogbookSettings> typedSettings();

    UnitFormat m_format;
    LogbookSettings m_settings;
    QLineEdit* m_currency;
    QPushButton* m_add;
    QTabWidget* m_tabs;
};

} // namespace holdband::ui
