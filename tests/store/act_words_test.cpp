#include "core/store/history/act_words.h"

#include <QCoreApplication>
#include <QTranslator>
#include <gtest/gtest.h>

using namespace holdband::store;

namespace {

/// A language whose words are the English ones in brackets.
class Brackets : public QTranslator {
public:
    Brackets() { QCoreApplication::installTranslator(this); }
    ~Brackets() override { QCoreApplication::removeTranslator(this); }

    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override
    {
        return QLatin1Char('[') + QString::fromUtf8(source) + QLatin1Char(']');
    }
};

TEST(ActWords, StayAsTheyAreKeptWhereThereIsNoCatalogue)
{
    for (const char* act : {"typed a round of 5 readings", "took back: imported loop.csv",
                            "Coil power 2 took the place of Coil power", "setup Cold box retired",
                            "Pale 3: cause of the excursion of 7 Mar 06:30", "made by hand"})
        EXPECT_EQ(actForPeople(act), act);
}

TEST(ActWords, AreFoundWithTheNamesInThem)
{
    const Brackets language;
    EXPECT_EQ(actForPeople("imported loop.csv"), "[imported loop.csv]");
    EXPECT_EQ(actForPeople("typed a round of 1 reading"), "[typed a round of 1 reading]");
    EXPECT_EQ(actForPeople("took away 3 readings of Coil power"),
              "[took away 3 readings of Coil power]");
    EXPECT_EQ(actForPeople("Pale 3: Hold ended"), "[Pale 3: Hold ended]");
    EXPECT_EQ(actForPeople("took back: did again: rounds changed"),
              "[took back: [did again: [rounds changed]]]");
}

TEST(ActWords, OfNoKnownActStayAsTheyAre)
{
    const Brackets language;
    EXPECT_EQ(actForPeople("made by hand"), "made by hand");
    EXPECT_EQ(actForPeople(""), "");
}

TEST(ActWords, DoNoHarmToNamesThatLookLikeThem)
{
    const Brackets language;
    EXPECT_EQ(actForPeople("imported took back: %1.csv"), "[imported took back: %1.csv]");
    EXPECT_EQ(actForPeople("A took the place of B took the place of C"),
              "[A took the place of B took the place of C]");
}

} // namespace
