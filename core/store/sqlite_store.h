// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/water_store.h"

namespace store {

/// The water store as a GeoPackage, through SQLite.
///
/// Keeps its rollback journal beside the file while it saves, and syncs before every step that
/// counts: after a kill or a power cut the next opening finds the last state that was saved. A
/// write-ahead log would be quicker, but leaves a file that is not whole without its companions.
class SqliteStore final : public WaterStore {
public:
    /// \param connection to a file at the newest schema step.
    SqliteStore(std::unique_ptr<Connection> connection, Opening opening);

    [[nodiscard]] Opening opening() const override { return opening_; }
    [[nodiscard]] const std::filesystem::path& path() const override { return connection_->path(); }
    [[nodiscard]] bool isReadOnly() const override { return connection_->isReadOnly(); }
    [[nodiscard]] base::Result<water::Water> load(base::Progress& progress) override;
    [[nodiscard]] base::Result<void> save(const water::Water& water,
                                          std::span<const water::Part> parts,
                                          base::Progress& progress) override;
    [[nodiscard]] base::Result<void> saveDrawing(const surface::DrawnWater& drawn,
                                                 const geo::WaterFrame& frame,
                                                 water::Stamp stamp) override;
    [[nodiscard]] base::Result<std::optional<KeptDrawing>>
    loadDrawing(const geo::Outline& outline) override;
    [[nodiscard]] base::Result<void> saveFound(const water::Water& water,
                                               const water::Derived& found,
                                               std::span<const marks::Mark> marks,
                                               base::Progress& progress) override;
    [[nodiscard]] base::Result<void> saveWhole(const water::Water& water,
                                               const water::Derived& found,
                                               std::span<const marks::Mark> marks,
                                               base::Progress& progress) override;
    [[nodiscard]] base::Result<CheckReport> check(base::Progress& progress) override;

private:
    std::unique_ptr<Connection> connection_;
    Opening opening_;
};

} // namespace store
