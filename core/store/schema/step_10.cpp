// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema/steps.h"
#include "core/store/statement.h"

#include <array>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store::schema {

namespace {

struct Constraint {
    const char* table;
    const char* text;
};

// What every row points to, and the ranges that reading asks for (store/ranges): so that nobody
// else's program can put in what would be refused here. Numbers that are not finite are in none.
constexpr std::array constraints{
    Constraint{"soundings", "FOREIGN KEY (day_id) REFERENCES survey_days (id) "
                            "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"soundings", "CHECK (typeof(shown_depth_m) IN ('real','integer') AND "
                            "shown_depth_m BETWEEN -100 AND 12000)"},
    Constraint{"gauge_readings", "FOREIGN KEY (day_id) REFERENCES survey_days (id) "
                                 "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"gauge_readings", "CHECK (level_m BETWEEN -12000 AND 12000)"},
    Constraint{"passes", "FOREIGN KEY (day_id) REFERENCES survey_days (id) "
                         "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"passes", "CHECK (first_sounding >= 0)"},
    Constraint{"verdicts_by_hand", "FOREIGN KEY (day_id) REFERENCES survey_days (id) "
                                   "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"verdicts_by_hand", "CHECK (sounding >= 0)"},
    Constraint{"survey_days", "CHECK (draft_m BETWEEN -100 AND 100)"},
    Constraint{"survey_days", "CHECK (assumed_sound_speed_m_s BETWEEN 100 AND 10000)"},
    Constraint{"survey_days", "CHECK (gauge_level_m BETWEEN -12000 AND 12000)"},
    Constraint{"survey_days", "CHECK (water_temperature_c BETWEEN -100 AND 100)"},
    Constraint{"survey_days", "CHECK (agreed_offset_m BETWEEN -1000 AND 1000)"},
    Constraint{"survey_days", "CHECK (agreed_delay_s BETWEEN -100000 AND 100000)"},
    Constraint{"lead_line", "CHECK (depth_m BETWEEN -100 AND 12000)"},
    Constraint{"weed_notes", "CHECK (height_m BETWEEN -100 AND 100)"},
    Constraint{"weed_lines", "FOREIGN KEY (note) REFERENCES weed_notes (fid) "
                             "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"weed_areas", "FOREIGN KEY (note) REFERENCES weed_notes (fid) "
                             "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"stays", "CHECK (rods BETWEEN -1000 AND 1000)"},
    Constraint{"stays", "CHECK (wind_from_deg BETWEEN -720 AND 720)"},
    Constraint{"stays", "CHECK (wind_speed_m_s BETWEEN 0 AND 200)"},
    Constraint{"stays", "CHECK (water_temperature_c BETWEEN -100 AND 100)"},
    Constraint{"stays", "CHECK (level_m BETWEEN -12000 AND 12000)"},
    Constraint{"fish", "FOREIGN KEY (stay_fid) REFERENCES stays (fid) "
                       "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"fish", "CHECK (weight_kg BETWEEN 0 AND 10000)"},
    Constraint{"fish", "CHECK (length_m BETWEEN 0 AND 100)"},
    Constraint{"fish", "CHECK (bait_depth_m BETWEEN -100 AND 12000)"},
    Constraint{"section_change_points", "FOREIGN KEY (change_id) REFERENCES section_changes (id) "
                                        "DEFERRABLE INITIALLY DEFERRED"},
    Constraint{"belief_profiles", "CHECK (weight BETWEEN -1000 AND 1000)"},
    Constraint{"laid_by_hand", "CHECK (wind_from_deg BETWEEN -720 AND 720)"},
};

/// Nothing of ours but this may touch the tables' own text.
class TablesOpen {
public:
    explicit TablesOpen(Connection& connection) : connection_(connection) {
        sqlite3_db_config(connection_.handle(), SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
        connection_.execute("PRAGMA writable_schema = ON");
    }
    ~TablesOpen() {
        connection_.execute("PRAGMA writable_schema = RESET");
        sqlite3_db_config(connection_.handle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    }
    TablesOpen(const TablesOpen&) = delete;
    TablesOpen& operator=(const TablesOpen&) = delete;
    TablesOpen(TablesOpen&&) = delete;
    TablesOpen& operator=(TablesOpen&&) = delete;

private:
    Connection& connection_;
};

std::int64_t schemaVersion(Connection& connection) {
    Statement row(connection, "PRAGMA schema_version");
    row.ask();
    return row.next() ? row.wholeNumber(0) : 0;
}

} // namespace

// Constraints are put into the tables' text, as SQLite's guide to ALTER TABLE (section 7) has it
// for what changes no row: rows that break them already are left where they are, and check tells of
// them.
void layStep10(Connection& connection) {
    connection.execute("CREATE INDEX IF NOT EXISTS fish_by_stay ON fish (stay_fid)");
    const std::int64_t version = schemaVersion(connection);
    {
        const TablesOpen open(connection);
        Statement put(connection, "UPDATE sqlite_master SET sql = substr(sql, 1, length(sql) - 1) "
                                  "|| ', ' || ?1 || ')' WHERE type = 'table' AND name = ?2 "
                                  "AND substr(sql, -1) = ')' AND instr(sql, ?1) = 0");
        for (const Constraint& constraint : constraints) {
            put.run(constraint.text, constraint.table);
        }
        connection.execute(fmt::format("PRAGMA schema_version = {}", version + 1));
    }
}

} // namespace store::schema
