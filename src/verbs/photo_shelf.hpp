// The photos that a survey names, from their files to what a paper takes.
#pragma once

#include <string>
#include <vector>

#include "photos/photo.hpp"
#include "photos/prepare.hpp"
#include "verbs/streams.hpp"
#include "verbs/surveys.hpp"

namespace tinworm::verbs {

struct PhotoOptions {
  std::string folder;  // that photos are taken from; empty: the survey's own
  photos::Wanted wanted;
  bool missing_photos = false;           // one that can't be shown is a gap, not a mistake
  unsigned jobs = 0;                     // threads; 0: all processors
  int problems = yaml::problems_listed;  // told at most
};

struct ShelvedPhotos {
  photos::Album album;   // every photo that the survey names, by path
  std::string sha256;    // of all that could be read, in order of path; empty: none is named
  std::string mistakes;  // of all that can't be shown, each with its place; empty: none, or allowed
};

// Of a survey that was read well; paths go from that folder, and a link that leads out of it is
// refused. At most one photo for each thread is held as the camera left it, and all threads
// together hold no more whole pictures than photos/limits.hpp has it. A bar shows how far
// it is. Nothing is thrown for a photo that isn't there, can't be read or is broken.
ShelvedPhotos shelve_photos(const Loaded& loaded, const PhotoOptions& options,
                            const Streams& streams);

// The files of every photo that a survey names, there or not: no output replaces one.
std::vector<std::string> photo_files(const Loaded& loaded, const std::string& folder);

}  // namespace tinworm::verbs
