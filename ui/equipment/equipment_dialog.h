// Shared by the dialogs of setups, sensors and meters: the list of setups, and saving the typed
// item.
#pragma once

#include "ui/equipment/equipment_tables.h"
#include "ui/forms/form_dialog.h"
#include "ui/forms/save_row.h"
#include "ui/words/words.h"

class QComboBox;

namespace holdband::ui {

/// How a kind of equipment is stored, and its verbs in the history.
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

    /// Fills the list with the setups in use, and with `chosen` if it is retired; `none` as in
    /// offerChoices().
    static void offerSetups(QComboBox* list, const Equipment& equipment, const std::string& chosen,
                            const QString& none = {});

    /// Adds the item if `oldName` is empty, else changes the one of that name; shows the Problem if
    /// the typed values have one.
    template <typename Thing>
    void saveThing(const Result<Thing>& typed, const std::string& oldName,
                   const EquipmentStoring<Thing>& storing)
    {
        if (!typed)
            return foot()->refuse(sentence(typed.error()));
        commitChange({oldName.empty() ? storing.added : storing.changed, {typed->name}},
                     [thing = *typed, oldName, storing](const store::Change& change) {
                         return oldName.empty() ? storing.add(change, thing)
                                                : storing.update(change, oldName, thing);
                     });
    }
};

} // namespace holdband::ui
