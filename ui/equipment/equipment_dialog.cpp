#include "ui/equipment/equipment_dialog.h"

#include "ui/forms/choices.h"

namespace holdband::ui {

void EquipmentDialog::offerSetups(QComboBox* list, const Equipment& equipment,
                                  const std::string& chosen, const QString& none)
{
    std::vector<std::string> names;
    for (const Setup& setup : equipment.setups) {
        if (!setup.retired || setup.name == chosen)
            names.push_back(setup.name);
    }
    offerChoices(list, names, chosen, none);
}

} // namespace holdband::ui
