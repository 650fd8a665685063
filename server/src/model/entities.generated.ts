// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Chemistry } from './entities/chemistry.generated.ts';
import type { Device } from './entities/device.generated.ts';
import type { Document } from './entities/document.generated.ts';
import type { Library } from './entities/library.generated.ts';
import type { Monitor } from './entities/monitor.generated.ts';
import type { Packaging } from './entities/packaging.generated.ts';
import type { Poster } from './entities/poster.generated.ts';
import type { Procedure } from './entities/procedure.generated.ts';
import type { Question } from './entities/question.generated.ts';
import type { Quiz } from './entities/quiz.generated.ts';
import type { Response } from './entities/response.generated.ts';
import type { Set } from './entities/set.generated.ts';
import type { SignOff } from './entities/sign-off.generated.ts';
import type { Site } from './entities/site.generated.ts';
import type { Sterilizer } from './entities/sterilizer.generated.ts';
import type { Training } from './entities/training.generated.ts';
import type { Ultrasonic } from './entities/ultrasonic.generated.ts';
import type { Waiver } from './entities/waiver.generated.ts';
import type { Washer } from './entities/washer.generated.ts';
import type { Water } from './entities/water.generated.ts';

/** Kind of rule file to the type of its entity. */
export interface EntityOf {
  readonly 'library': Library;
  readonly 'site': Site;
  readonly 'document': Document;
  readonly 'device': Device;
  readonly 'response': Response;
  readonly 'question': Question;
  readonly 'washer': Washer;
  readonly 'ultrasonic': Ultrasonic;
  readonly 'sterilizer': Sterilizer;
  readonly 'chemistry': Chemistry;
  readonly 'water': Water;
  readonly 'packaging': Packaging;
  readonly 'monitor': Monitor;
  readonly 'set': Set;
  readonly 'procedure': Procedure;
  readonly 'poster': Poster;
  readonly 'training': Training;
  readonly 'quiz': Quiz;
  readonly 'waiver': Waiver;
  readonly 'sign-off': SignOff;
}
