#include "sample-data/maker/plans.h"

namespace holdband::sample {

std::string plansText()
{
    return R"(  "plans": [
    { "name": "Ale", "note": "Made up; common practice", "tolerance_f": 3, "schedule": [
        { "stage": "Primary", "target_f": 66, "hours": 216 },
        { "stage": "Rise", "kind": "ramp", "target_f": 69, "hours": 24 },
        { "stage": "Rest", "target_f": 69, "hours": 72, "until": "turned down" },
        { "stage": "Crash", "target_f": 35, "hours": 72, "settle_hours": 72 } ] },
    { "name": "Lager with rest", "note": "Made up; common practice", "tolerance_f": 3, "schedule": [
        { "stage": "Primary", "target_f": 52, "hours": 192, "until": "gravity",
          "until_gravity": 1.020 },
        { "stage": "Rise", "kind": "ramp", "target_f": 60, "hours": 24 },
        { "stage": "Diacetyl rest", "target_f": 60, "hours": 72, "until": "turned down" },
        { "stage": "Crash", "target_f": 34, "settle_hours": 96 } ] }
  ])";
}

} // namespace holdband::sample
