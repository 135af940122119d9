// SPDX-License-Identifier: GPL-3.0-or-later
// What the steps made, in the file: given back to the last bit where it is of the water as it is,
// and left out in every other case.
#include "core/store/results/keep_results.h"
#include "core/store/results/result_members.h"
#include "core/water/steps/derive.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/bowl.h"
#include "tests/support/scratch_folder.h"

#include <cmath>
#include <random>
#include <set>

#include <gtest/gtest.h>

namespace {

using water::Derived;
using water::Step;

base::Progress quiet;

/// Lines 24 m apart with a sounding every 4 m, along the parallels or across them; one in fifty is
/// a spike.
soundings::SurveyDay linesOverTheBowl(std::int64_t id, bool isAcross) {
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(id);
    for (double off = -0.9; off <= 0.9; off += 0.1) {
        day.passStarts.edit().push_back(day.soundings.size());
        for (int i = 0; i <= 110; ++i) {
            const double along = -0.9 + 1.8 * i / 110.0;
            const double x = isAcross ? off : along;
            const double y = isAcross ? along : off;
            const double spike_m = day.soundings.size() % 50 == 49 ? 3.0 : 0.0;
            day.soundings.edit().push_back({{3.1 + 0.0038 * x, 55.2 + 0.0019 * y},
                                            units::Depth::metres(8.0 - 4.0 * std::hypot(x, y) +
                                                                 spike_m + (isAcross ? 0.2 : 0.0)),
                                            {}});
        }
    }
    return day;
}

/// Two survey days that cross, weed, a closed corner, and one wish about the sections that can be
/// met and one that cannot.
water::Water bowl() {
    water::Water water;
    water.name = "bowl";
    water.shoreline = support::bowlShore();
    water.days = {linesOverTheBowl(1, false), linesOverTheBowl(2, true)};
    water.weedNotes = {{weed::WeedNoteId(1), {3.1, 55.2}, weed::Growth::thick, {}}};
    water.houseRules.closed = {
        {"corner", {{{{3.096, 55.198}, {3.097, 55.198}, {3.097, 55.199}, {3.096, 55.199}}, {}}}}};
    water.settings.cell = units::Length::metres(6.0);
    water.settings.sectionArea = units::Area::hectares(3.0);
    water.plan.launch = geo::LonLat{3.0965, 55.2};
    sections::SectionChange split;
    split.kind = sections::SectionChange::Kind::split;
    split.line = {{3.09, 55.2}, {3.11, 55.2}};
    sections::SectionChange nowhere;
    nowhere.places = {{3.2, 55.3}, {3.2, 55.3}};
    water.sectionChanges = {split, nowhere};
    EXPECT_TRUE(water::layFrame(water));
    return water;
}

Derived made(const water::Water& water, const Derived& before = {}) {
    return water::derive(water, before, Step::sections, quiet).value();
}

/// What a store gives of a file.
Derived recalled(store::WaterStore& store, const water::Water& water,
                 std::span<const Step> steps = store::keptSteps) {
    Derived derived;
    derived.outline = std::make_shared<const geo::Outline>(
        geo::Outline::make(water.shoreline, *water.frame).value());
    auto drawing = store.loadDrawing(*derived.outline).value();
    EXPECT_TRUE(drawing);
    derived.drawn = std::make_shared<const surface::DrawnWater>(std::move(drawing->drawn));
    derived.stamps[Step::draw] = drawing->stamp;
    EXPECT_TRUE(store.loadResults(water, steps, derived));
    return derived;
}

template <class T>
std::vector<std::byte> bytesOf(const T& result, const grid::GridFrame& frame) {
    store::ResultWriter writer;
    store::ResultMembers<store::ResultWriter>(writer, frame).take(result);
    EXPECT_TRUE(writer.isFine());
    return writer.bytes();
}

class KeptResults : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(store_->saveWhole(water_, found_, {}, quiet));
        ASSERT_EQ(found_.failures.size(), 0U);
        ASSERT_GT(found_.sections->sections.size(), 3U);
        ASSERT_EQ(found_.sections->refused.size(), 1U);
        ASSERT_GT(found_.structure->zones.size(), 0U);
        ASSERT_GT(found_.checked->crossings.size(), 10U);
        ASSERT_GT(found_.checked->survey.setAsideCounts().at("spike"), 5U);
    }
    [[nodiscard]] std::set<Step> held(const water::Water& water) const {
        std::set<Step> steps;
        for (const auto& [step, stamp] : recalled(*store_, water).stamps) {
            steps.insert(step);
        }
        return steps;
    }

    const support::ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
    const water::Water water_ = bowl();
    const Derived found_ = made(water_);
    const std::unique_ptr<store::WaterStore> store_ = store::create(path_).value();
};

const std::set<Step> drawingAlone{Step::draw};
const std::set<Step> all{Step::reduce, Step::draw, Step::bands, Step::structure, Step::sections};

TEST_F(KeptResults, ComeBackToTheLastBit) {
    const Derived back = recalled(*store_, water_);
    const grid::GridFrame& frame = found_.drawn->depth.frame();
    EXPECT_EQ(bytesOf(*back.checked, frame), bytesOf(*found_.checked, frame));
    EXPECT_EQ(bytesOf(*back.form, frame), bytesOf(*found_.form, frame));
    EXPECT_EQ(bytesOf(*back.structure, frame), bytesOf(*found_.structure, frame));
    EXPECT_EQ(bytesOf(*back.sections, frame), bytesOf(*found_.sections, frame));
}

TEST_F(KeptResults, AreWhatWasMade) {
    const Derived back = recalled(*store_, water_);
    const auto& sections = back.sections->sections;
    ASSERT_EQ(sections.size(), found_.sections->sections.size());
    EXPECT_EQ(back.sections->sectionOfCell, found_.sections->sectionOfCell);
    for (std::size_t i = 0; i < sections.size(); ++i) {
        const sections::Section& wanted = found_.sections->sections[i];
        EXPECT_EQ(sections[i].name, wanted.name);
        EXPECT_EQ(sections[i].cells, wanted.cells);
        EXPECT_EQ(sections[i].area, wanted.area);
        EXPECT_EQ(sections[i].maxDepth, wanted.maxDepth);
        EXPECT_EQ(sections[i].bandShare, wanted.bandShare);
        EXPECT_EQ(sections[i].trustShare, wanted.trustShare);
    }
    ASSERT_EQ(back.sections->refused.size(), 1U);
    EXPECT_EQ(back.sections->refused[0].change, 1U);
    EXPECT_EQ(back.sections->refused[0].why.sentence(), found_.sections->refused[0].why.sentence());
    EXPECT_EQ(back.structure->zones.front().name, found_.structure->zones.front().name);
    EXPECT_EQ(back.structure->zones.front().kind, found_.structure->zones.front().kind);
    EXPECT_EQ(back.structure->zones.front().cells, found_.structure->zones.front().cells);
    EXPECT_EQ(back.form->contours.size(), found_.form->contours.size());
    EXPECT_EQ(back.form->contours.front().line, found_.form->contours.front().line);
    EXPECT_EQ(back.form->bandMeasures.back().to, std::nullopt);
    EXPECT_EQ(back.form->hypsography.volume, found_.form->hypsography.volume);
    EXPECT_EQ(back.checked->survey.days[1].verdicts, found_.checked->survey.days[1].verdicts);
    EXPECT_EQ(back.checked->survey.days[1].depth_m, found_.checked->survey.days[1].depth_m);
    EXPECT_EQ(back.checked->tie.isTied, found_.checked->tie.isTied);
    EXPECT_EQ(back.checked->tie.offsets, found_.checked->tie.offsets);
    EXPECT_EQ(back.checked->check.rms_m, found_.checked->check.rms_m);
}

TEST_F(KeptResults, BringTheSoundingsKeptAlong) {
    const Derived back = recalled(*store_, water_);
    ASSERT_EQ(back.checked->kept.size(), found_.checked->kept.size());
    for (std::size_t i = 0; i < back.checked->kept.size(); ++i) {
        const soundings::KeptSounding& one = back.checked->kept[i];
        const soundings::KeptSounding& wanted = found_.checked->kept[i];
        ASSERT_EQ(one.place, wanted.place) << i;
        ASSERT_EQ(one.x_m, wanted.x_m) << i;
        ASSERT_EQ(one.depth_m, wanted.depth_m) << i;
        ASSERT_EQ(one.day, wanted.day) << i;
        ASSERT_EQ(one.pass, wanted.pass) << i;
    }
}

TEST_F(KeptResults, LeaveNothingToBeMadeButWhatIsQuick) {
    const Derived back = made(water_, recalled(*store_, water_));
    std::set<Step> made;
    for (const auto& [step, seconds] : back.seconds) {
        made.insert(step);
    }
    EXPECT_EQ(made, (std::set<Step>{Step::level, Step::weed}));
    EXPECT_EQ(back.stamps, found_.stamps);
}

TEST_F(KeptResults, AreReadOnlyAsFarAsTheyAreAskedFor) {
    const std::array asked{Step::sections};
    const Derived back = recalled(*store_, water_, asked);
    EXPECT_TRUE(back.sections);
    EXPECT_FALSE(back.checked || back.form || back.structure);
}

TEST_F(KeptResults, OfAnotherWaterAreLeftOut) {
    water::Water changed = water_;
    changed.houseRules.closed.clear();
    EXPECT_EQ(held(changed),
              (std::set<Step>{Step::reduce, Step::draw, Step::bands, Step::structure}));
    changed = water_;
    changed.settings.bands =
        contours::Bands::make({units::Depth::metres(3.0)}, units::Depth::metres(5.0)).value();
    EXPECT_EQ(held(changed), (std::set<Step>{Step::reduce, Step::draw}));
    changed = water_;
    changed.days[0].setAsideByHand = {3};
    EXPECT_EQ(held(changed), drawingAlone) << "the old map, with the stamp that tells its age";
    EXPECT_EQ(held(water_), all);
}

TEST_F(KeptResults, GoWhenWhatIsFoundIsKeptWithoutThem) {
    ASSERT_TRUE(store_->saveFound(water_, water::withoutDrawing(found_), {}, quiet));
    EXPECT_EQ(held(water_), drawingAlone);
}

TEST_F(KeptResults, OfANewMapReplaceThoseOfTheOld) {
    water::Water changed = water_;
    changed.settings.sectionArea = units::Area::hectares(6.0);
    const Derived again = made(changed, found_);
    ASSERT_LT(again.sections->sections.size(), found_.sections->sections.size());
    ASSERT_TRUE(store_->saveFound(changed, again, {}, quiet));
    EXPECT_EQ(recalled(*store_, changed).sections->sections.size(),
              again.sections->sections.size());
    EXPECT_EQ(support::rowsOf(path_, "step", "step_results ORDER BY step").size(), 4U);
    EXPECT_FALSE(held(water_).contains(Step::sections));
}

TEST_F(KeptResults, DividedAnewReplaceThoseOfBefore) {
    Derived again = found_;
    auto map = *found_.sections;
    map.sections[0].name = "as divided anew";
    again.sections = std::make_shared<const sections::SectionMap>(map);
    ASSERT_EQ(again.stamps, found_.stamps) << "nothing that they are made from has changed";
    ASSERT_TRUE(store_->saveFound(water_, again, {}, quiet));
    EXPECT_EQ(recalled(*store_, water_).sections->sections[0].name, "as divided anew");
}

TEST_F(KeptResults, OfAnotherDrawingAreLeftOut) {
    surface::DrawnWater afresh = *found_.drawn;
    for (float& depth_m : afresh.depth.raw_m()) {
        depth_m *= 1.01F;
    }
    ASSERT_TRUE(store_->saveDrawing(afresh, *water_.frame, found_.stamps.at(Step::draw)));
    EXPECT_EQ(held(water_), drawingAlone) << "a cut between two saves may leave them so";
    Derived again = found_;
    again.drawn = std::make_shared<const surface::DrawnWater>(afresh);
    ASSERT_TRUE(store_->saveFound(water_, again, {}, quiet));
    EXPECT_EQ(held(water_), all);
}

TEST_F(KeptResults, OfAnAssumedShoreAreNotKept) {
    water::Water shoreless = water_;
    shoreless.shoreline = {};
    const Derived found = made(shoreless);
    ASSERT_TRUE(found.outlineIsAssumed);
    ASSERT_TRUE(store_->saveWhole(shoreless, found, {}, quiet));
    EXPECT_TRUE(support::rowsOf(path_, "step", "step_results").empty());
}

TEST_F(KeptResults, ThatTheDiskGivesBackOtherwiseAreLeftOut) {
    support::changeFile(path_, "UPDATE step_results SET content=CAST(substr(content,1,length("
                               "content)-9)||x'01'||substr(content,-8) AS BLOB) "
                               "WHERE step='sections'");
    support::changeFile(path_, "UPDATE step_results SET content=x'' WHERE step='bands'");
    support::changeFile(path_, "UPDATE step_results SET content=substr(content,1,100) "
                               "WHERE step='structure'");
    EXPECT_EQ(held(water_), (std::set<Step>{Step::reduce, Step::draw}));
}

TEST_F(KeptResults, OfAnotherKindOfValueAreLeftOutAndKeptAnew) {
    support::changeFile(path_, "UPDATE step_results SET content_sum='' WHERE step='sections'");
    support::changeFile(path_, "UPDATE step_results SET stamp='now' WHERE step='bands'");
    support::changeFile(path_, "UPDATE step_results SET content='none' WHERE step='structure'");
    EXPECT_EQ(held(water_), (std::set<Step>{Step::reduce, Step::draw}));
    ASSERT_TRUE(store_->saveFound(water_, water::withoutDrawing(found_), {}, quiet));
    ASSERT_TRUE(store_->saveWhole(water_, found_, {}, quiet));
    EXPECT_EQ(held(water_), all);
}

TEST_F(KeptResults, ThatPointToWhatIsNotThereAreLeftOut) {
    Derived wrong = found_;
    auto map = *found_.sections;
    map.sections.pop_back();
    wrong.sections = std::make_shared<const sections::SectionMap>(map);
    auto zones = *found_.structure;
    zones.zoneOfCell[0] = -2;
    wrong.structure = std::make_shared<const structure::ZoneMap>(zones);
    auto checked = *found_.checked;
    checked.crossings[3].soundingB = checked.kept.size();
    wrong.checked = std::make_shared<const water::CheckedSurvey>(checked);
    ASSERT_TRUE(store_->saveFound(water_, water::withoutDrawing(found_), {}, quiet));
    wrong.stamps = found_.stamps;
    ASSERT_TRUE(store_->saveWhole(water_, wrong, {}, quiet));
    EXPECT_EQ(held(water_), (std::set<Step>{Step::draw, Step::bands}));
    ASSERT_TRUE(store_->saveFound(water_, water::withoutDrawing(found_), {}, quiet));
    checked = *found_.checked;
    checked.survey.days[1].points.pop_back();
    wrong.checked = std::make_shared<const water::CheckedSurvey>(checked);
    ASSERT_TRUE(store_->saveWhole(water_, wrong, {}, quiet));
    EXPECT_FALSE(held(water_).contains(Step::reduce));
}

TEST_F(KeptResults, OnAnotherGridAreNotKept) {
    Derived wrong = found_;
    auto map = *found_.sections;
    map.sectionOfCell = grid::Grid<sections::SectionNumber>(grid::GridFrame(0, 0, 1, 2, 2), -1);
    wrong.sections = std::make_shared<const sections::SectionMap>(map);
    wrong.stamps[Step::sections] = water::Stamp(77);
    ASSERT_TRUE(store_->saveFound(water_, wrong, {}, quiet));
    EXPECT_EQ(support::rowsOf(path_, "step", "step_results ORDER BY step"),
              (std::vector<std::string>{"'bands'", "'reduce'", "'structure'"}));
}

/// A result read from bytes that somebody spoiled is either refused or harmless: as many cells and
/// places as the frame has, and no more memory than the bytes can speak of.
template <class T>
void spoil(const T& result, const grid::GridFrame& frame, unsigned seed) {
    const std::vector<std::byte> whole = bytesOf(result, frame);
    std::mt19937 random(seed);
    int refused = 0;
    for (int turn = 0; turn < 400; ++turn) {
        std::vector<std::byte> bytes = whole;
        const std::size_t at = random() % bytes.size();
        if (turn % 4 == 0) {
            bytes.resize(at);
        } else {
            bytes[turn % 4 == 1 ? at : at % std::min<std::size_t>(bytes.size(), 256)] =
                static_cast<std::byte>(random());
        }
        store::ResultReader reader(bytes);
        T read;
        store::ResultMembers<store::ResultReader>(reader, frame).take(read);
        refused += reader.isWhole() ? 0 : 1;
        if (reader.isWhole()) {
            EXPECT_LT(bytesOf(read, frame).size(), 4 * whole.size());
        }
    }
    EXPECT_GT(refused, 100) << seed;
}

TEST_F(KeptResults, SpoiledDoNoHarm) {
    const grid::GridFrame& frame = found_.drawn->depth.frame();
    spoil(*found_.checked, frame, 1);
    spoil(*found_.form, frame, 2);
    spoil(*found_.structure, frame, 3);
    spoil(*found_.sections, frame, 4);
}

TEST(ResultReader, RefusesMoreThanIsThere) {
    const grid::GridFrame frame(0, 0, 1, 10, 10);
    store::ResultWriter writer;
    writer.number(std::uint64_t{1} << 60);
    store::ResultReader reader(writer.bytes());
    std::vector<double> numbers;
    store::ResultCells<store::ResultReader>(reader, frame).take(numbers);
    EXPECT_FALSE(reader.isFine());
    EXPECT_TRUE(numbers.empty());
}

TEST(ResultReader, RefusesCellsBeyondTheFrame) {
    const grid::GridFrame frame(0, 0, 1, 10, 10);
    const auto isRead = [&](std::vector<std::uint32_t> stretches) {
        store::ResultWriter writer;
        writer.number(static_cast<std::uint64_t>(stretches.size()));
        writer.numbers(std::span(stretches));
        store::ResultReader reader(writer.bytes());
        std::vector<std::size_t> cells;
        store::ResultCells<store::ResultReader>(reader, frame).takeCells(cells);
        return reader.isWhole();
    };
    EXPECT_TRUE(isRead({0, 100}));
    EXPECT_TRUE(isRead({3, 2, 99, 1}));
    EXPECT_FALSE(isRead({0, 101}));
    EXPECT_FALSE(isRead({99, 2}));
    EXPECT_FALSE(isRead({5, 3, 7, 1})) << "not ascending";
}

TEST(ResultReader, RefusesPlacesThatAreNowhere) {
    const grid::GridFrame frame(0, 0, 1, 10, 10);
    const auto isRead = [&](double x_m) {
        store::ResultWriter writer;
        const std::vector<geo::WaterPoint> path{{x_m, 1.0}};
        store::ResultCells<store::ResultWriter> parts(writer, frame);
        parts.take(path);
        store::ResultReader reader(writer.bytes());
        std::vector<geo::WaterPoint> read;
        store::ResultCells<store::ResultReader>(reader, frame).take(read);
        return reader.isWhole();
    };
    EXPECT_TRUE(isRead(-4321.5));
    EXPECT_FALSE(isRead(NAN));
    EXPECT_FALSE(isRead(1e8));
}

} // namespace
