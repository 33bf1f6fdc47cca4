// Photos beside a survey: what is taken, and what is told of those that can't be.
#include "verbs/photo_shelf.hpp"

#include <cstdlib>
#include <filesystem>
#include <stdexcept>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "photos/made_jpeg.hpp"
#include "verbs/photo_file.hpp"
#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;
namespace fixture = photos::fixture;

const std::string survey_text =
    "survey: 1\n"
    "body: small-body 2\n"
    "car: {name: Wherry 1200}\n"
    "visit: {date: 2025-04-12}\n"
    "photos: {folder: photos, name: \"IMG_{}.jpg\"}\n"
    "seen:\n"
    "  bare: 11 51 52\n"
    "zones:\n"
    "  51:\n"
    "    photos: 1\n"
    "    found:\n"
    "      - rear end: pitting, firm, photo 2 3\n"
    "    repairs:\n"
    "      - let-in, 60x40, photo 1\n"
    "  own-a:\n"
    "    name: tow bracket\n"
    "    role: local\n"
    "    side: centre\n"
    "    seen: bare\n"
    "    photos: side/tow.jpg\n";

// A survey that names four photos, one of them twice, in a folder of its own.
class Photos : public testing::Test {
 protected:
  void SetUp() override {
    fs::create_directories(workshop.path("photos"));
    fs::create_directories(workshop.path("side"));
    workshop.put("car.yaml", survey_text);
    for (const char* name : {"photos/IMG_1.jpg", "photos/IMG_2.jpg", "photos/IMG_3.jpg"}) {
      workshop.put(name, good);
    }
    workshop.put("side/tow.jpg", good);
  }

  ShelvedPhotos shelved(bool missing_photos = false, unsigned jobs = 2) const {
    PlanShelf plans(workshop.path("panels"));
    const Loaded loaded = load_survey(workshop.path("car.yaml"), plans);
    if (!loaded.survey) throw std::runtime_error(loaded.mistakes);
    Streams silent;
    silent.quiet = true;
    ShelvedPhotos shelved = shelve_photos(loaded, {{}, {32, 90}, missing_photos, jobs}, silent);
    const std::string folder = workshop.path("");
    for (std::size_t at = 0; (at = shelved.mistakes.find(folder)) != std::string::npos;) {
      shelved.mistakes.erase(at, folder.size());
    }
    return shelved;
  }

  static std::string reason(const ShelvedPhotos& shelved, const std::string& path) {
    const auto found = shelved.album.find(path);
    if (found == shelved.album.end()) return "not in the album";
    return found->second ? "shown" : found->second.error();
  }

  Workshop workshop;
  const std::string good =
      fixture::made_jpeg(fixture::quarters(64, 48), {.segments = {fixture::exif(6)}});
};

TEST_F(Photos, AreTakenOncePerPathAndMadeReady) {
  for (const unsigned jobs : {1u, 4u}) {
    const ShelvedPhotos taken = shelved(false, jobs);
    EXPECT_EQ(taken.mistakes, "");
    ASSERT_EQ(taken.album.size(), 4u);
    for (const auto& [path, photo] : taken.album) {
      ASSERT_TRUE(photo) << path << ": " << photo.error();
      EXPECT_EQ(photo->width_px, 24) << path;
      EXPECT_EQ(photo->height_px, 32) << path;
      EXPECT_EQ(photo->jpeg.find("Exif"), std::string::npos) << path;
    }
    EXPECT_EQ(taken.album, shelved(false, 3).album);
  }
}

// A camera writes IMG_0001.jpg where a survey says 1 of "IMG_{}.jpg".
TEST_F(Photos, AreFoundWhateverZerosTheirFilesCarry) {
  fs::rename(workshop.path("photos/IMG_1.jpg"), workshop.path("photos/IMG_0001.jpg"));
  fs::rename(workshop.path("photos/IMG_2.jpg"), workshop.path("photos/IMG_02.jpg"));
  const ShelvedPhotos taken = shelved();
  EXPECT_EQ(taken.mistakes, "");
  for (const char* path : {"photos/IMG_1.jpg", "photos/IMG_2.jpg", "photos/IMG_3.jpg"})
    EXPECT_EQ(reason(taken, path), "shown");
  const Ended ended = workshop.run("check car.yaml --panels panels");
  EXPECT_EQ(ended.results.find("where is the photo"), std::string::npos) << ended.results;
  // Of two nobody knows which is meant.
  workshop.put("photos/IMG_001.jpg", good);
  EXPECT_EQ(reason(shelved(true), "photos/IMG_1.jpg"), "there is no such photo");
}

TEST_F(Photos, ThatCannotBeShownAreAllToldInOneGoWithTheirPlaces) {
  fs::remove(workshop.path("photos/IMG_1.jpg"));
  workshop.put("photos/IMG_2.jpg", good.substr(0, good.size() / 2));
  workshop.put("photos/IMG_3.jpg", "\x89PNG\r\n\x1a\n");
  fs::remove(workshop.path("side/tow.jpg"));
  workshop.put("side/tow.JPG", good);
  const ShelvedPhotos taken = shelved();
  EXPECT_EQ(
      taken.mistakes,
      "car.yaml:10:13: there is no such photo (found \"photos/IMG_1.jpg\"; put the file "
      "there, correct the survey, or give --missing-photos to have the gap marked)\n"
      "    photos: 1\n"
      "            ^\n"
      "car.yaml:12:40: the photo is cut short (found \"photos/IMG_2.jpg\"; copy it from the "
      "camera again, or give --missing-photos to have the gap marked)\n"
      "      - rear end: pitting, firm, photo 2 3\n"
      "                                       ^\n"
      "car.yaml:12:42: the photo is a PNG file, whatever its name says (found "
      "\"photos/IMG_3.jpg\"; allowed: JPEG; save it as JPEG, or copy it from the camera "
      "again, or give --missing-photos to have the gap marked)\n"
      "      - rear end: pitting, firm, photo 2 3\n"
      "                                         ^\n"
      "car.yaml:14:30: there is no such photo (found \"photos/IMG_1.jpg\"; put the file "
      "there, correct the survey, or give --missing-photos to have the gap marked)\n"
      "      - let-in, 60x40, photo 1\n"
      "                             ^\n"
      "car.yaml:20:13: there is no such photo (found \"side/tow.jpg\"; the folder has tow.JPG: "
      "write it so, or give --missing-photos to have the gap marked)\n"
      "    photos: side/tow.jpg\n"
      "            ^\n");
}

TEST_F(Photos, ThatCannotBeShownMayBecomeGaps) {
  fs::remove(workshop.path("photos/IMG_1.jpg"));
  workshop.put("photos/IMG_2.jpg", good.substr(0, good.size() / 2));
  const ShelvedPhotos taken = shelved(true);
  EXPECT_EQ(taken.mistakes, "");
  EXPECT_EQ(reason(taken, "photos/IMG_1.jpg"), "there is no such photo");
  EXPECT_EQ(reason(taken, "photos/IMG_2.jpg"), "the photo is cut short");
  EXPECT_EQ(reason(taken, "photos/IMG_3.jpg"), "shown");
  EXPECT_EQ(reason(taken, "side/tow.jpg"), "shown");
}

TEST_F(Photos, LieInTheSurveysFolderAndAreFiles) {
  const Workshop elsewhere;
  elsewhere.put("secret.jpg", good);
  fs::remove(workshop.path("photos/IMG_1.jpg"));
  fs::create_symlink(elsewhere.path("secret.jpg"), workshop.path("photos/IMG_1.jpg"));
  fs::remove(workshop.path("photos/IMG_2.jpg"));
  fs::create_symlink("../side/tow.jpg", workshop.path("photos/IMG_2.jpg"));
  fs::remove(workshop.path("photos/IMG_3.jpg"));
  fs::create_directory(workshop.path("photos/IMG_3.jpg"));
  const ShelvedPhotos taken = shelved(true);
  EXPECT_EQ(reason(taken, "photos/IMG_1.jpg"),
            "the photo is a link that leads out of the survey's folder");
  EXPECT_EQ(reason(taken, "photos/IMG_2.jpg"), "shown") << "a link that stays inside";
  EXPECT_EQ(reason(taken, "photos/IMG_3.jpg"), "the photo can't be read: a folder, not a file");
}

// Where the survey's folder lies is nobody's matter: "car" must not let "car-2" in.
TEST_F(Photos, DoNotLieInAFolderOfALikeName) {
  fs::create_directories(workshop.path("car"));
  fs::create_directories(workshop.path("car-2"));
  workshop.put("car-2/a.jpg", good);
  fs::create_symlink("../car-2/a.jpg", workshop.path("car/a.jpg"));
  workshop.put("car/b.jpg", good);
  EXPECT_FALSE(read_photo(workshop.path("car"), "a.jpg"));
  EXPECT_TRUE(read_photo(workshop.path("car"), "b.jpg"));
  EXPECT_TRUE(read_photo(workshop.path("car") + "/", "b.jpg"));
}

TEST_F(Photos, ThatCannotBeReadAreRefusedInWords) {
  ASSERT_EQ(std::system(("mkfifo " + workshop.path("pipe.jpg")).c_str()), 0);
  fs::create_symlink("round.jpg", workshop.path("round.jpg"));
  fs::create_symlink("nowhere.jpg", workshop.path("dangling.jpg"));
  struct {
    std::string path, what, cure;
  } const cases[] = {
      {"none.jpg", "there is no such photo", "put the file there, correct the survey"},
      {"no/folder.jpg", "there is no such photo", "put the file there, correct the survey"},
      {"dangling.jpg", "there is no such photo", "put the file there, correct the survey"},
      {"PHOTOS/IMG_1.jpg", "there is no such photo", "put the file there, correct the survey"},
      {"photos/img_1.JPG", "there is no such photo", "the folder has IMG_1.jpg: write it so"},
      {"car.yaml/a.jpg", "the photo can't be read: a part of the path is a file, not a folder",
       "see to the file"},
      {"pipe.jpg", "the photo can't be read: not a plain file", "see to the file"},
      {"round.jpg", "the photo can't be read: Too many levels of symbolic links",
       "see to the file"},
  };
  for (const auto& each : cases) {
    const auto read = read_photo(workshop.path(""), each.path);
    ASSERT_FALSE(read) << each.path;
    EXPECT_EQ(read.error().what, each.what) << each.path;
    EXPECT_EQ(read.error().cure, each.cure) << each.path;
  }
}

}  // namespace
}  // namespace tinworm::verbs
