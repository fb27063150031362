// Setups, sensors and meters.
#include "core/exchange/description_parts.h"

#include "core/text/phrase.h"

namespace holdband::exchange {

namespace {

Part readPart(Fields fields)
{
    Part part;
    part.item = fields.requiredText("item");
    part.quantity = fields.number("quantity", 0.0, many).value_or(1.0);
    part.price = fields.number("price", -many, many).value_or(0.0);
    fields.refuseUnknown();
    return part;
}

Offset readOffset(Fields fields)
{
    Offset offset;
    offset.from = fields.requiredTime("from");
    const auto add = fields.difference("add", -1000.0);
    if (!add)
        fields.fail("add_c", Phrase::tr("the key is missing"),
                    Phrase::tr("give %1 or %2").with("add_c", "add_f"));
    offset.add = add.value_or(TemperatureDifference{});
    offset.doubt = fields.difference("doubt", 0.0);
    offset.why = fields.text("why").value_or("");
    fields.refuseUnknown();
    return offset;
}

MeterMove readMove(Fields fields)
{
    MeterMove move{fields.requiredTime("from"), fields.text("setup")};
    fields.refuseUnknown();
    return move;
}

} // namespace

Setup readSetup(Fields fields)
{
    Setup setup;
    setup.name = fields.requiredText("name");
    setup.kind = fields.text("kind").value_or("");
    setup.vessels = fields.integer("vessels", 1, 1000).value_or(1);
    if (const auto watts = fields.number("rated_power_w", 0.0, many))
        setup.ratedPower = Power::watts(*watts);
    for (Fields& part : fields.objects("parts"))
        setup.parts.push_back(readPart(part));
    auto ratings = fields.object("ratings");
    const Json* all = fields.raw("ratings");
    if (ratings && all->is_object()) {
        for (const auto& [criterion, value] : all->items())
            setup.ratings[criterion] = ratings->requiredNumber(criterion.c_str(), 1.0, 5.0);
    }
    setup.retired = fields.time("retired");
    fields.refuseUnknown();
    return setup;
}

Sensor readSensor(Fields fields)
{
    Sensor sensor;
    sensor.name = fields.requiredText("name");
    if (!fields.has("reads"))
        fields.fail("reads", Phrase::tr("the key is missing"),
                    Phrase::tr("it is one of %1").with(choicesText<SensorKind>()));
    sensor.reads = choice<SensorKind>(fields, "reads").value_or(SensorKind::beer);
    sensor.setup = fields.text("setup");
    sensor.accuracy = fields.difference("accuracy", 0.0);
    sensor.placement = fields.text("placement").value_or("");
    sensor.readByHand = fields.flag("read_by_hand").value_or(false);
    sensor.retired = fields.time("retired");
    sensor.intervalTime =
        choice<IntervalTime>(fields, "interval_time").value_or(IntervalTime::start);
    for (Fields& offset : fields.objects("offsets"))
        sensor.offsets.push_back(readOffset(offset));
    std::sort(sensor.offsets.begin(), sensor.offsets.end(),
              [](const Offset& a, const Offset& b) { return a.from < b.from; });
    const auto twice =
        std::adjacent_find(sensor.offsets.begin(), sensor.offsets.end(),
                           [](const Offset& a, const Offset& b) { return a.from == b.from; });
    if (twice != sensor.offsets.end())
        fields.fail("offsets", Phrase::tr("two offsets begin at the same time"),
                    Phrase::tr("choose one"));
    fields.refuseUnknown();
    return sensor;
}

Meter readMeter(Fields fields)
{
    Meter meter;
    meter.name = fields.requiredText("name");
    meter.setup = fields.requiredText("setup");
    if (const auto kwh = fields.number("resolution_kwh", 0.0, many))
        meter.resolution = Energy::kilowattHours(*kwh);
    if (const auto kwh = fields.number("rolls_over_at_kwh", 1e-6, many))
        meter.rollsOverAt = Energy::kilowattHours(*kwh);
    if (const auto percent = fields.number("accuracy_pct", 0.0, 100.0))
        meter.accuracy = *percent / 100.0;
    meter.from = fields.time("from");
    meter.to = fields.time("to");
    if (meter.from && meter.to && *meter.to <= *meter.from)
        fields.fail("to", Phrase::tr("the service ends before it begins"));
    for (Fields& move : fields.objects("moves"))
        meter.moves.push_back(readMove(move));
    checkIncreasing(fields, "moves", meter.moves);
    meter.retired = fields.time("retired");
    fields.refuseUnknown();
    return meter;
}

} // namespace holdband::exchange
