#include "core/store/history/record_messages.h"

#include <QtGlobal>
#include <algorithm>
#include <array>

namespace holdband::store {

namespace {

constexpr std::array things{
    RecordMessages{
        "batch", QT_TRANSLATE_NOOP("Phrase", "there is no batch \"%1\""),
        QT_TRANSLATE_NOOP("Phrase", "there is a batch \"%1\" already"),
        QT_TRANSLATE_NOOP("Phrase", "\"%1\" and the batch \"%2\" differ only in case or spaces"),
        QT_TRANSLATE_NOOP("Phrase", "a batch needs a name"),
        QT_TRANSLATE_NOOP("Phrase", "the batch's name \"%1\" is too long"),
        QT_TRANSLATE_NOOP("Phrase", "the batch's name holds a line break or a control character")},
    RecordMessages{
        "meter", QT_TRANSLATE_NOOP("Phrase", "there is no meter \"%1\""),
        QT_TRANSLATE_NOOP("Phrase", "there is a meter \"%1\" already"),
        QT_TRANSLATE_NOOP("Phrase", "\"%1\" and the meter \"%2\" differ only in case or spaces"),
        QT_TRANSLATE_NOOP("Phrase", "a meter needs a name"),
        QT_TRANSLATE_NOOP("Phrase", "the meter's name \"%1\" is too long"),
        QT_TRANSLATE_NOOP("Phrase", "the meter's name holds a line break or a control character")},
    RecordMessages{
        "plan", QT_TRANSLATE_NOOP("Phrase", "there is no plan \"%1\""),
        QT_TRANSLATE_NOOP("Phrase", "there is a plan \"%1\" already"),
        QT_TRANSLATE_NOOP("Phrase", "\"%1\" and the plan \"%2\" differ only in case or spaces"),
        QT_TRANSLATE_NOOP("Phrase", "a plan needs a name"),
        QT_TRANSLATE_NOOP("Phrase", "the plan's name \"%1\" is too long"),
        QT_TRANSLATE_NOOP("Phrase", "the plan's name holds a line break or a control character")},
    RecordMessages{
        "sensor", QT_TRANSLATE_NOOP("Phrase", "there is no sensor \"%1\""),
        QT_TRANSLATE_NOOP("Phrase", "there is a sensor \"%1\" already"),
        QT_TRANSLATE_NOOP("Phrase", "\"%1\" and the sensor \"%2\" differ only in case or spaces"),
        QT_TRANSLATE_NOOP("Phrase", "a sensor needs a name"),
        QT_TRANSLATE_NOOP("Phrase", "the sensor's name \"%1\" is too long"),
        QT_TRANSLATE_NOOP("Phrase", "the sensor's name holds a line break or a control character")},
    RecordMessages{
        "setup", QT_TRANSLATE_NOOP("Phrase", "there is no setup \"%1\""),
        QT_TRANSLATE_NOOP("Phrase", "there is a setup \"%1\" already"),
        QT_TRANSLATE_NOOP("Phrase", "\"%1\" and the setup \"%2\" differ only in case or spaces"),
        QT_TRANSLATE_NOOP("Phrase", "a setup needs a name"),
        QT_TRANSLATE_NOOP("Phrase", "the setup's name \"%1\" is too long"),
        QT_TRANSLATE_NOOP("Phrase", "the setup's name holds a line break or a control character")},
};

} // namespace

const RecordMessages& thingWords(std::string_view thing)
{
    const auto* found =
        std::find_if(things.begin(), things.end(),
                     [thing](const RecordMessages& each) { return each.thing == thing; });
    return found == things.end() ? things.front() : *found;
}

} // namespace holdband::store
