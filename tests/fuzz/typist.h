// Types a meter's readings in any order, deletes, restores and corrects them: the energy counted is
// the energy used.
#pragma once

#include "core/analysis/meter_curve.h"
#include "tests/fuzz/stored_register.h"
#include "tests/fuzz/true_register.h"

#include <algorithm>
#include <memory>
#include <numeric>

namespace holdband::fuzz {

using intake::ReadingCheck;
using intake::ReadingDoubt;

class Typist {
public:
    /// `stores`: does the same in a logbook, with undo after each change.
    Typist(TrueRegister truth, bool stores)
        : m_truth(std::move(truth)), m_check(m_truth.meter, {}, Zone::utc()),
          m_typed(m_truth.readings.size(), false)
    {
        if (stores)
            m_stored = std::make_unique<StoredRegister>(m_truth.meter);
    }

    std::size_t count() const { return m_truth.readings.size(); }
    bool mixed() const { return m_truth.mixed; }

    /// Types what the check takes, until it takes no more. True: all readings are in.
    bool typeAll(const std::vector<std::size_t>& order)
    {
        for (bool more = true; more;) {
            more = false;
            for (const std::size_t i : order)
                more |= !m_typed[i] && type(i);
        }
        return std::find(m_typed.begin(), m_typed.end(), false) == m_typed.end();
    }

    void expectTrueTotal() const { expectTotal(m_truth.total()); }

    /// A deletion whose truth is clear leaves the sum as it is, but for what was used between the
    /// last two readings before a reset. Restoring gives the sum back.
    bool removeAndRestore(std::size_t i)
    {
        const MeterReading removed = m_check.stored()[i];
        remove({removed.at});
        if (i > 0 && i + 1 < count() && oneEventAtMost(i)) {
            const bool beforeReset = m_truth.readings[i + 1].happened == MeterEvent::reset;
            expectTotal(m_truth.total() - (beforeReset ? m_truth.readings[i].used : 0.0));
        }
        if (!restore({removed})) {
            expect(!oneEventAtMost(i), "a deleted reading can be restored",
                   [this] { return text(); });
            return false;
        }
        expectTrueTotal();
        return true;
    }

    bool removeAndRestoreSeveral(std::uint16_t which)
    {
        std::vector<MeterReading> removed;
        std::set<Instant> instants;
        for (std::size_t i = 0; i < count(); ++i) {
            if ((which >> i & 1) == 0)
                continue;
            removed.push_back(m_check.stored()[i]);
            instants.insert(removed.back().at);
        }
        if (removed.empty())
            return true;
        remove(instants);
        // Where a reset and a rollover fall into one pair, only one of them can be stored.
        if (!restore(removed) || mixed())
            return false;
        expectTrueTotal();
        return true;
    }

    /// A wrong correction that is accepted, and corrected back. As the two above: false if the way
    /// back is refused; then there is no true sum to compare with any more.
    bool correctAndBack(std::size_t i, double wrong)
    {
        const double right = m_truth.kwhAt(i);
        if (!correct(i, wrong))
            return true;
        if (!correct(i, right))
            return false;
        expectTrueTotal();
        return true;
    }

private:
    void expectTotal(double kwh) const
    {
        expect(counted() == kwh, "the energy counted is the energy used",
               [&] { return text() + ", expected " + std::to_string(kwh); });
    }

    bool type(std::size_t i)
    {
        MeterReading reading = m_truth.readings[i].reading;
        // Nothing can be asked where there is no reading before, so it is said.
        if (previous(i) == noReading || mixed())
            reading.event = m_truth.readings[i].happened;
        ReadingCheck check = m_check.check(reading);
        if (check.doubt && check.doubt->doubt == ReadingDoubt::belowBefore) {
            reading.event = happenedSince(previous(i), i);
            check = m_check.check(reading);
        }
        if (check.doubt)
            return false;
        m_check.accept(reading, check);
        m_done += " typed " + std::to_string(i);
        m_typed[i] = true;
        if (m_stored)
            m_stored->type(reading);
        expectExplained();
        return true;
    }

    static constexpr std::size_t noReading = static_cast<std::size_t>(-1);
    std::size_t previous(std::size_t i) const
    {
        while (i-- > 0) {
            if (m_typed[i])
                return i;
        }
        return noReading;
    }

    MeterEvent happenedSince(std::size_t from, std::size_t to) const
    {
        std::optional<MeterEvent> happened;
        for (std::size_t i = from + 1; i <= to; ++i) {
            const auto& each = m_truth.readings[i].happened;
            if (each && happened != MeterEvent::reset)
                happened = each;
        }
        expect(happened.has_value(), "it asks only where something happened",
               [this] { return text(); });
        return *happened;
    }

    void remove(const std::set<Instant>& instants)
    {
        m_check.remove(instants);
        m_done += " removed " + std::to_string(instants.size());
        if (m_stored)
            m_stored->remove(instants);
        expectExplained();
    }
    bool restore(const std::vector<MeterReading>& readings)
    {
        const auto before = m_check;
        if (m_check.restore(readings)) {
            m_check = before;
            return false;
        }
        m_done += " restored";
        if (m_stored)
            m_stored->restore(readings);
        expectExplained();
        return true;
    }
    bool correct(std::size_t i, double kwh)
    {
        MeterReading corrected = m_check.stored()[i];
        corrected.registerReading = Energy::kilowattHours(kwh);
        const ReadingCheck check = m_check.checkCorrection(corrected);
        if (check.doubt)
            return false;
        m_check.correct(corrected, check);
        m_done += " corrected " + std::to_string(i) + " to " + std::to_string(kwh);
        if (m_stored)
            m_stored->correct(corrected.at, kwh);
        expectExplained();
        return true;
    }

    /// Whether the readings beside it show what happened as well as those with it.
    bool oneEventAtMost(std::size_t i) const
    {
        const bool own = m_truth.readings[i].happened.has_value();
        const bool next = i + 1 < count() && m_truth.readings[i + 1].happened.has_value();
        if (i == 0 || i + 1 == count())
            return !own && !next;
        return !own && !next ? true : own != next && m_truth.kwhAt(i + 1) < m_truth.kwhAt(i - 1);
    }

    /// Every fall has its reason, and no rollover is counted without a fall.
    void expectExplained() const
    {
        const auto& readings = m_check.stored();
        for (std::size_t i = 1; i < readings.size(); ++i) {
            const bool falls = readings[i].registerReading < readings[i - 1].registerReading;
            expect(!falls || readings[i].event, "a fall has a reason", [this] { return text(); });
            expect(falls || readings[i].event != MeterEvent::rollover, "a rollover is a fall",
                   [this] { return text(); });
        }
        if (m_stored)
            m_stored->expectSame(readings);
    }

    double counted() const
    {
        const auto& readings = m_check.stored();
        if (readings.size() < 2)
            return 0.0;
        const analysis::MeterCurve curve({readings, {}, m_truth.meter.rollsOverAt}, {});
        return curve.over({readings.front().at, readings.back().at}).kwh;
    }

    std::string text() const
    {
        std::string all = "used:";
        for (const TrueReading& each : m_truth.readings)
            all += " " + std::to_string(each.reading.registerReading.kilowattHours()) +
                   eventText(each.happened);
        all += "\nstored:";
        for (const MeterReading& each : m_check.stored())
            all +=
                " " + std::to_string(each.registerReading.kilowattHours()) + eventText(each.event);
        return all + "\ndone:" + m_done + "\ncounted " + std::to_string(counted()) + " of " +
               std::to_string(m_truth.total());
    }
    static std::string eventText(const std::optional<MeterEvent>& event)
    {
        return !event ? "" : event == MeterEvent::reset ? " (reset)" : " (rollover)";
    }

    TrueRegister m_truth;
    intake::RegisterCheck m_check;
    std::vector<bool> m_typed;
    std::string m_done; ///< for the report of a broken property
    std::unique_ptr<StoredRegister> m_stored;
};

inline std::vector<std::size_t> orderFrom(Bytes& bytes, std::size_t count)
{
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    for (std::size_t i = count; i > 1; --i)
        std::swap(order[i - 1], order[bytes.byte() % i]);
    return order;
}

/// Types all readings, and makes at most that many further changes.
inline void typeAndChange(Bytes bytes, bool stores, int mostSteps)
{
    Typist typist(trueRegisterFrom(bytes), stores);
    std::vector<std::size_t> order = orderFrom(bytes, typist.count());
    if (typist.mixed())
        std::sort(order.begin(), order.end());
    if (!typist.typeAll(order))
        return; // some order can't be typed without a question that is never asked
    typist.expectTrueTotal();
    for (int step = 0; step < mostSteps && !bytes.atEnd(); ++step) {
        const std::uint8_t what = bytes.byte() % 3;
        const std::size_t which = bytes.below(typist.count());
        const bool back =
            what == 0   ? typist.removeAndRestore(which)
            : what == 1 ? typist.removeAndRestoreSeveral(bytes.word())
                        : typist.correctAndBack(which, static_cast<double>(bytes.below(10'000)));
        if (!back)
            return;
    }
}

} // namespace holdband::fuzz
