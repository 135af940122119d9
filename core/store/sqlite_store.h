// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/save_mark.h"
#include "core/store/water_store.h"

#include <functional>
#include <mutex>

namespace store {

/// The water store as a GeoPackage, through SQLite.
///
/// Keeps its rollback journal beside the file while it saves, and syncs before every step that
/// counts: after a kill or a power cut the next opening finds the last state that was saved. A
/// write-ahead log would be quicker, but leaves a file that is not whole without its companions.
class SqliteStore final : public WaterStore {
public:
    /// Both connections lead to the same file, at the newest schema step. \param watch for
    /// hasChanged() alone. \param known where the file stands.
    SqliteStore(std::unique_ptr<Connection> connection, std::unique_ptr<Connection> watch,
                Opening opening, WriteRight right, SaveMark known);
    ~SqliteStore() override;
    SqliteStore(const SqliteStore&) = delete;
    SqliteStore& operator=(const SqliteStore&) = delete;
    SqliteStore(SqliteStore&&) = delete;
    SqliteStore& operator=(SqliteStore&&) = delete;

    [[nodiscard]] Opening opening() const override { return opening_; }
    [[nodiscard]] const std::filesystem::path& path() const override { return connection_->path(); }
    [[nodiscard]] bool isReadOnly() const override;
    [[nodiscard]] std::optional<Owner> owner() const override;
    [[nodiscard]] base::Result<bool> hasChanged() override;
    [[nodiscard]] base::Result<water::Water> loadShore() override;
    [[nodiscard]] base::Result<water::Water> load(base::Progress& progress) override;
    [[nodiscard]] base::Result<void> save(const water::Water& water,
                                          std::span<const water::Part> parts,
                                          base::Progress& progress) override;
    [[nodiscard]] base::Result<void> saveDrawing(const surface::DrawnWater& drawn,
                                                 const geo::WaterFrame& frame,
                                                 water::Stamp stamp) override;
    [[nodiscard]] base::Result<std::optional<KeptDrawing>>
    loadDrawing(const geo::Outline& outline) override;
    [[nodiscard]] base::Result<void> loadResults(const water::Water& water,
                                                 std::span<const water::Step> steps,
                                                 water::Derived& derived) override;
    [[nodiscard]] base::Result<void> saveFound(const water::Water& water,
                                               const water::Derived& found,
                                               const marks::ToldMarks& told,
                                               base::Progress& progress) override;
    [[nodiscard]] base::Result<void> saveWhole(const water::Water& water,
                                               const water::Derived& found,
                                               const marks::ToldMarks& told,
                                               base::Progress& progress) override;
    [[nodiscard]] base::Result<CheckReport> check(base::Progress& progress) override;

private:
    /// The one way of saving: all that `keep` puts into the connection, in one transaction, if the
    /// file is as this store knows it.
    [[nodiscard]] base::Result<void> saveAtOnce(const std::function<void()>& keep);
    [[nodiscard]] base::Result<void> claim();
    /// What a failure of reading is called where the file is a newer version's.
    [[nodiscard]] base::Error asRead(base::Error error) const;
    [[nodiscard]] SaveMark known() const;
    /// True where the file stands where this store loaded or left it.
    [[nodiscard]] bool isOurs(const SaveMark& found) const;
    void noteTried(const SaveMark& mark);
    void noteKnown(const SaveMark& mark);
    [[nodiscard]] base::Result<void> saveOnTop(const std::function<void()>& keep);
    void keepPart(const water::Water& water, water::Part part,
                  const reduction::ReducedSurvey* reduced, base::Progress& progress);

    mutable std::mutex mutex_; ///< Of the right, and of what is known and tried.
    WriteRight right_;         ///< Let go of after the connections are closed.
    std::unique_ptr<Connection> connection_;
    std::unique_ptr<Connection> watch_;
    Opening opening_;
    SaveMark known_; ///< Of the file as it was last loaded or saved.
    SaveMark tried_; ///< Of the last save begun: whether it is there only the file can tell.
    /// What the file surely holds of the log, so that a save need not write all of it again.
    std::optional<logbook::KeptLog> logInFile_;
    bool hasSaved_ = false;
    bool hasFailed_ = false;
};

} // namespace store
