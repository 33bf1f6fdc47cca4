// What comes out of a camera's file: upright, of the size wanted, and nothing else; what must not.
#include "photos/prepare.hpp"

#include <algorithm>
#include <cstdlib>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "photos/jpeg_reader.hpp"
#include "photos/made_jpeg.hpp"

namespace tinworm::photos {
namespace {

using namespace fixture;
using testing::HasSubstr;

const Wanted small{64, 90};

std::string text(const Refusal& refusal) {
  return refusal.what + " | " + refusal.allowed + " | " + refusal.cure;
}

// The name of the patch's colour at that share of width and height; "?" for any other.
char patch(const Pixels& pixels, double x, double y) {
  const unsigned char* at =
      pixels.at(static_cast<int>(x * pixels.width_px), static_cast<int>(y * pixels.height_px));
  const std::pair<char, Colour> known[] = {{'R', red}, {'G', green}, {'B', blue}, {'W', white}};
  for (const auto& [name, colour] : known) {
    bool same = true;
    for (int c = 0; c < 3; ++c) same = same && std::abs(at[c] - colour[c]) <= 12;
    if (same) return name;
  }
  return '?';
}

std::string patches(const Pixels& pixels) {
  return {patch(pixels, .25, .25), patch(pixels, .75, .25), patch(pixels, .25, .75),
          patch(pixels, .75, .75)};
}

std::string patches(const Prepared& photo) {
  const auto pixels = read_jpeg(photo.jpeg);
  return pixels ? patches(*pixels) : text(pixels.error());
}

// Markers up to the picture's data, in order; then those after it.
std::vector<int> segments(const std::string& jpeg) {
  std::vector<int> markers;
  const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(jpeg.at(at)); };
  for (std::size_t at = 0; at < jpeg.size();) {
    if (byte(at) != 0xFF) {  // of the picture's data
      ++at;
      continue;
    }
    const int marker = byte(at + 1);
    at += 2;
    if (marker == 0x00) continue;  // the data's own 0xFF
    markers.push_back(marker);
    if (marker != 0xD8 && marker != 0xD9) at += byte(at) << 8 | byte(at + 1);
  }
  return markers;
}

TEST(Prepare, TurnsAPhotoUprightHoweverTheCameraWasHeld) {
  // Stored quarters, left to right and down, of a scene that reads RG above BW: by the sides that
  // Exif says row 0 and column 0 are of.
  struct {
    int orientation;
    std::vector<Colour> stored;
  } const cases[] = {{1, {red, green, blue, white}}, {2, {green, red, white, blue}},
                     {3, {white, blue, green, red}}, {4, {blue, white, red, green}},
                     {5, {red, blue, green, white}}, {6, {green, white, red, blue}},
                     {7, {white, green, blue, red}}, {8, {blue, red, white, green}}};
  for (const auto& each : cases) {
    const bool across = each.orientation >= 5;
    const Pixels stored = across ? quarters(32, 48, each.stored) : quarters(48, 32, each.stored);
    for (const bool big_endian : {false, true}) {
      const auto photo =
          prepare(made_jpeg(stored, {.segments = {exif(each.orientation, big_endian)}}), small);
      ASSERT_TRUE(photo) << text(photo.error());
      EXPECT_EQ(photo->width_px, 48) << each.orientation;
      EXPECT_EQ(photo->height_px, 32) << each.orientation;
      EXPECT_EQ(patches(*photo), "RGBW") << each.orientation;
    }
  }
}

TEST(Prepare, TakesAnOrientationThatMakesNoSenseForNone) {
  auto broken = exif(6);
  broken.second.resize(20);
  for (const auto& segment : {exif(0), exif(9), exif(0x0600), broken,
                              std::pair<int, std::string>(0xE1, std::string("Exif\0\0", 6))}) {
    const auto photo = prepare(made_jpeg(quarters(48, 32), {.segments = {segment}}), small);
    ASSERT_TRUE(photo) << text(photo.error());
    EXPECT_EQ(patches(*photo), "RGBW");
  }
}

TEST(Prepare, LeavesNothingButThePicture) {
  const std::vector<std::pair<int, std::string>> told{
      exif(1),
      {0xE1, std::string("http://ns.adobe.com/xap/1.0/\0<x:made-up-xmp/>", 45)},
      {0xE2, std::string("ICC_PROFILE\0\1\1made-up-profile", 29)},
      {0xED, "Photoshop 3.0 made-up-caption"},
      {0xFE, "made-up-comment"}};
  std::string jpeg = made_jpeg(quarters(48, 32), {.segments = told});
  jpeg += "made-up-trailer";
  const std::vector<std::string> words{"Exif", "Wherryflex", "made-up", "ICC_PROFILE", "adobe"};
  for (const std::string& word : words) ASSERT_THAT(jpeg, HasSubstr(word));
  const auto photo = prepare(jpeg, small);
  ASSERT_TRUE(photo) << text(photo.error());
  for (const std::string& word : words) {
    EXPECT_EQ(photo->jpeg.find(word), std::string::npos) << word;
  }
  // SOI, JFIF, two tables, a baseline frame, four codes, the scan, EOI.
  EXPECT_EQ(segments(photo->jpeg),
            (std::vector<int>{0xD8, 0xE0, 0xDB, 0xDB, 0xC0, 0xC4, 0xC4, 0xC4, 0xC4, 0xDA, 0xD9}));
  EXPECT_TRUE(photo->jpeg.ends_with("\xFF\xD9"));
}

TEST(Prepare, WritesEveryKindAsBaseline) {
  const std::vector<Colour> shades{{20}, {90}, {160}, {230}};
  struct {
    std::string jpeg;
    int channels;
  } const cases[] = {
      {made_jpeg(quarters(48, 32), {.scans = Scans::progressive}), 3},
      {made_jpeg(quarters(48, 32), {.restart_rows = 1}), 3},
      {made_jpeg(quarters(48, 32, shades)), 1},
      {made_jpeg(quarters(48, 32, shades), {.scans = Scans::progressive}), 1},
  };
  for (const auto& each : cases) {
    const auto photo = prepare(each.jpeg, small);
    ASSERT_TRUE(photo) << text(photo.error());
    const auto pixels = read_jpeg(photo->jpeg);
    ASSERT_TRUE(pixels);
    EXPECT_EQ(pixels->channels, each.channels);
    EXPECT_THAT(segments(photo->jpeg), testing::Contains(0xC0));
    if (each.channels == 3) {
      EXPECT_EQ(patches(*pixels), "RGBW");
    } else {
      EXPECT_NEAR(*pixels->at(36, 8), 90, 3);
    }
  }
}

TEST(Prepare, MakesItSmallerAndNeverLarger) {
  struct {
    int width, height, wanted, to_width, to_height;
  } const cases[] = {
      {400, 300, 200, 200, 150}, {400, 300, 401, 400, 300},
      {400, 300, 400, 400, 300}, {400, 300, 399, 399, 299},
      {300, 400, 137, 103, 137}, {400, 3, 10, 10, 1},
      {9, 8, 2, 2, 1},           {1, 1, 1600, 1, 1},
      {1600, 1, 7, 7, 1},        {1001, 999, 500, 500, 499},
  };
  for (const auto& each : cases) {
    const auto photo =
        prepare(made_jpeg(quarters(each.width, each.height)), Wanted{each.wanted, 85});
    ASSERT_TRUE(photo) << text(photo.error());
    EXPECT_EQ(photo->width_px, each.to_width) << each.width << " x " << each.height;
    EXPECT_EQ(photo->height_px, each.to_height) << each.width << " x " << each.height;
    const auto pixels = read_jpeg(photo->jpeg);
    ASSERT_TRUE(pixels);
    EXPECT_EQ(pixels->width_px, photo->width_px);
    EXPECT_EQ(pixels->height_px, photo->height_px);
  }
}

TEST(Prepare, TakesTwelveMillionPixels) {
  const std::string jpeg = made_jpeg(quarters(4000, 3000), {.segments = {exif(8)}});
  const auto photo = prepare(jpeg, {});
  ASSERT_TRUE(photo) << text(photo.error());
  EXPECT_EQ(photo->width_px, 1200);
  EXPECT_EQ(photo->height_px, 1600);
  EXPECT_EQ(patches(*photo), "GWRB");  // a quarter anticlockwise
  EXPECT_EQ(photo, prepare(jpeg, {})) << "the same bytes twice";
}

// Scaled while decoding, against the whole picture's mean taken over the same pixels.
TEST(Prepare, IsTheMeanOfTheWholePicture) {
  Pixels waves{640, 480, 3, {}};
  for (int y = 0; y < 480; ++y) {
    for (int x = 0; x < 640; ++x) {
      for (const int value : {x * 255 / 639, y * 255 / 479, (x + y) % 64 * 2 + 60}) {
        waves.rows.push_back(static_cast<unsigned char>(value));
      }
    }
  }
  const std::string jpeg = made_jpeg(waves);
  const auto whole = read_jpeg(jpeg);
  const auto half = read_jpeg(jpeg, 320), quarter = read_jpeg(jpeg, 160);
  ASSERT_TRUE(whole && half && quarter);
  for (const auto& [part, by] : {std::pair(&*half, 2), std::pair(&*quarter, 4)}) {
    double off = 0;
    for (int y = 0; y < part->height_px; ++y) {
      for (int x = 0; x < 3 * part->width_px; ++x) {
        double sum = 0;
        for (int i = 0; i < by * by; ++i) {
          sum += *(whole->at(x / 3 * by + i % by, y * by + i / by) + x % 3);
        }
        off += std::abs(sum / (by * by) - *(part->at(x / 3, y) + x % 3));
      }
    }
    EXPECT_LT(off / static_cast<double>(part->rows.size()), 1.5) << "levels of 255, by " << by;
  }
}

TEST(Prepare, RefusesInWordsWhatCannotBeUsed) {
  const Pixels picture = quarters(48, 32);
  const std::string jpeg = made_jpeg(picture);
  const std::string progressive = made_jpeg(picture, {.scans = Scans::progressive});
  std::string stray = jpeg;
  stray.insert(stray.size() - 2, std::string(40, '\1'));
  std::string lossless = jpeg;
  lossless[lossless.find("\xFF\xC0") + 1] = '\xC3';
  const std::string again = "copy it from the camera again";
  const std::string anew = "save it as JPEG, or copy it from the camera again";
  const std::string rgb = "grey, RGB | save it as an RGB JPEG";
  struct {
    std::string bytes, refusal;
  } const cases[] = {
      {"", "the photo's file is empty |  | " + again},
      {"not a picture", "the photo is no JPEG | JPEG | " + anew},
      {"\xFF", "the photo is no JPEG | JPEG | " + anew},
      {"\x89PNG\r\n\x1a\n....", "the photo is a PNG file, whatever its name says | JPEG | " + anew},
      {std::string("\0\0\0\x18"
                   "ftypheic",
                   12),
       "the photo is a HEIC file, whatever its name says | JPEG | " + anew},
      {"RIFF....WEBPVP8 ", "the photo is a WebP file, whatever its name says | JPEG | " + anew},
      {"\xFF\xD8", "the photo is cut short |  | " + again},
      {jpeg.substr(0, jpeg.size() / 2), "the photo is cut short |  | " + again},
      {jpeg.substr(0, jpeg.size() - 1), "the photo is cut short |  | " + again},
      {progressive.substr(0, progressive.size() - 30), "the photo is cut short |  | " + again},
      {jpeg.substr(0, jpeg.size() - 60) + "\xFF\xD9", "the photo is damaged |  | " + again},
      {stray, "the photo is damaged |  | " + again},
      {"\xFF\xD8\xFF\xD9", "the photo is damaged |  | " + again},
      {lossless,
       "the photo is an unusual JPEG: Unsupported JPEG process: SOF type 0xc3 |  | save it as a "
       "baseline JPEG"},
      {with_size(jpeg, 0, 32),
       "the photo is an unusual JPEG: Empty JPEG image (DNL not supported) |  | save it as a "
       "baseline JPEG"},
      {with_size(jpeg, 20'000, 10'001),
       "the photo has 20000 x 10001 pixels | 200 million in all | save it smaller"},
      {with_size(jpeg, 20'000, 10'000), "the photo is damaged |  | " + again},
      {with_size(progressive, 20'000, 10'000),
       "the photo is a progressive JPEG too large to be held whole |  | save it smaller or as a "
       "baseline JPEG"},
      {made_jpeg(quarters(8, 8, {{20}, {90}, {160}, {230}}), {.scans = Scans::of_each_coefficient}),
       "the photo is a JPEG of more than 100 scans |  | save it as a baseline JPEG"},
      {made_jpeg(quarters(8, 8, {{0, 0, 0, 9}, {0, 9, 0, 0}, {9, 0, 0, 0}, {0, 0, 9, 0}})),
       "the photo is made for a printing press (CMYK) | " + rgb},
  };
  for (const auto& each : cases) {
    const auto photo = prepare(each.bytes, small);
    EXPECT_EQ(photo ? "taken" : text(photo.error()), each.refusal);
  }
}

TEST(Prepare, TakesStrayBytesBeforeTheEndAsCamerasLeaveThem) {
  std::string jpeg = made_jpeg(quarters(48, 32));
  jpeg.insert(jpeg.size() - 2, std::string(4, '\1'));
  const auto photo = prepare(jpeg, small);
  ASSERT_TRUE(photo) << text(photo.error());
  EXPECT_EQ(patches(*photo), "RGBW");
}

TEST(Prepare, RefusesAPhotoCutAnywhere) {
  for (const Scans scans : {Scans::one, Scans::progressive}) {
    const std::string jpeg = made_jpeg(quarters(40, 24), {.scans = scans, .segments = {exif(6)}});
    for (std::size_t length = 0; length < jpeg.size(); ++length) {
      EXPECT_FALSE(prepare(jpeg.substr(0, length), small)) << length << " of " << jpeg.size();
    }
  }
}

// A changed byte may pass for another picture; it must not do worse.
TEST(Prepare, LivesThroughAnyOneByteChanged) {
  for (const Scans scans : {Scans::one, Scans::progressive}) {
    const std::string jpeg = made_jpeg(quarters(24, 16), {.scans = scans, .segments = {exif(6)}});
    for (std::size_t at = 0; at < jpeg.size(); ++at) {
      for (const int change : {0x01, 0x80, 0xFF}) {
        std::string changed = jpeg;
        changed[at] = static_cast<char>(changed[at] ^ change);
        const auto photo = prepare(changed, {16, 90});
        if (photo) {
          EXPECT_LE(std::max(photo->width_px, photo->height_px), 16);
        } else {
          EXPECT_NE(photo.error().what, "");
        }
      }
    }
  }
}

TEST(Prepare, WantsWhatCanBe) {
  const std::string jpeg = made_jpeg(quarters(8, 8));
  for (const Wanted wanted : {Wanted{0, 85}, Wanted{-1, 85}, Wanted{100, 0}, Wanted{100, 101}}) {
    EXPECT_THROW(prepare(jpeg, wanted), std::invalid_argument);
  }
}

// Of 64 coefficients a block, 2 bytes each: 4 x 3 blocks of a whole colour channel of 32 x 24. Our
// JPEGs have the other two at half the size: 2 x 2 each.
TEST(Prepare, TellsWhatItWillHold) {
  const Pixels pixels = quarters(32, 24);
  Recipe recipe;
  EXPECT_EQ(held_bytes(made_jpeg(pixels, recipe)), 0) << "row by row";
  recipe.scans = Scans::progressive;
  EXPECT_EQ(held_bytes(made_jpeg(pixels, recipe)), (12 + 4 + 4) * 64 * 2);
  EXPECT_EQ(held_bytes("no JPEG"), 0);
  EXPECT_EQ(held_bytes(""), 0);
}

}  // namespace
}  // namespace tinworm::photos
