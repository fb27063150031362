// What the dialogs of setups, sensors and meters share: the setups to choose from, and how the
// thing that was typed is saved.
#pragma once

#include "ui/equipment/equipment_tables.h"
#include "ui/forms/form_dialog.h"
#include "ui/forms/save_row.h"
#include "ui/words/words.h"

class QComboBox;

namespace holdband::ui {

/// How a kind of equipment is stored, and what the history calls it.
template <typename Thing>
struct EquipmentStoring {
    store::HistoryVerb added;
    store::HistoryVerb changed;
    Done (*add)(const store::Change&, const Thing&);
    Done (*update)(const store::Change&, const std::string& name, const Thing&);
};

class EquipmentDialog : public FormDialog {
protected:
    using FormDialog::FormDialog;

    /// Fills the list with the setups in use, and with `chosen` where that one is retired; `none`
    /// as in offerChoices().
    static void offerSetups(QComboBox* list, const Equipment& equipment, const std::string& chosen,
                            const QString& none = {});

    /// Adds the thing where `oldName` is empty, else changes the one of that name; says the Problem
    /// where what was typed has one.
    template <typename Thing>
    void saveThing(const Result<Thing>& typed, const std::string& oldName,
                   const EquipmentStoring<Thing>& storing)
    {
        if (!typed)
            return foot()->refuse(sentence(typed.error()));
        keep({oldName.empty() ? storing.added : storing.changed, {typed->name}},
             [thing = *typed, oldName, storing](const store::Change& change) {
                 return oldName.empty() ? storing.add(change, thing)
                                        : storing.update(change, oldName, thing);
             });
    }
};

} // namespace holdband::ui
